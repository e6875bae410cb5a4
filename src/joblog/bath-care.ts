import { computed } from "./columns.ts";
import type { ComputedColumn, References } from "./definition.ts";
import { blankIf, litersInUnit, quoted, where } from "./formulas.ts";
import { alkaliAdded, hardness, volume } from "./units-of.ts";
import { degassing } from "./words.ts";

const careOf = (r: References, kind: string): string => where([
  [r.all("care", "bath"), r.here("bath")],
  [r.all("care", "kind"), quoted(kind)],
]);

/** T over P of the bath's titrated reading that is the first or the last. */
function ratio(end: "MINIFS" | "MAXIFS"): (r: References) => string {
  return (r) => {
    const titrated = where([
      [r.all("readings", "bath"), r.here("bath")],
      [r.all("readings", "alkalinityRatio"), quoted(">0")],
      [r.all("readings", "when"), quoted(">0")],
    ]);
    const when = `${end}(${r.all("readings", "when")},${titrated})`;
    return blankIf([`${r.here("bath")}=""`, `COUNTIFS(${titrated})=0`],
      `SUMIFS(${r.all("readings", "alkalinityRatio")},${titrated},${r.all("readings", "when")},${when})/COUNTIFS(${titrated},${r.all("readings", "when")},${when})`);
  };
}

/** Loads, losses and what else speaks for or against a change-out. */
export const bathCare: readonly ComputedColumn[] = [
  computed({ id: "loads", label: "Loads", type: "whole number", format: "0", width: 8, help: "From the sheet Loads, rework as well." },
    (r) => blankIf([`${r.here("bath")}=""`], `COUNTIFS(${r.all("loads", "bath")},${r.here("bath")})`)),
  computed({ id: "degassed", label: "Degassed", type: "text", width: 13, help: "A fresh fill holds air: degas it before the first load and before a foil test." },
    (r) => {
      const first = `MINIFS(${r.all("care", "when")},${careOf(r, "degas")})`;
      const load = `MINIFS(${r.all("loads", "when")},${r.all("loads", "bath")},${r.here("bath")})`;
      return blankIf([`${r.here("bath")}=""`, `${r.here("openingDose")}=""`], `IF(${first}=0,${quoted(degassing.none)},IF(AND(${load}>0,${load}<${first}),${quoted(degassing.late)},${quoted(degassing.done)}))`);
    }),
  computed({ id: "foilTest", label: "Last foil test", type: "date", width: 11, help: "From the sheet Care; a hospital guide has one every quarter." },
    (r) => {
      const last = `MAXIFS(${r.all("care", "when")},${careOf(r, "foil test")})`;
      return blankIf([`${r.here("bath")}=""`], `IF(${last}=0,"",INT(${last}))`);
    }),
  computed({ id: "drained", label: "Drained in all", type: "number", unit: volume, format: "0.00", width: 9, help: "Drained and skimmed, from Care: solution that took its concentrate along." },
    (r) => blankIf([`${r.here("bath")}=""`], `SUMIFS(${r.all("care", "amount")},${r.all("care", "bath")},${r.here("bath")})`)),
  computed({ id: "hardnessNow", label: "Hardness brought so far", type: "number", unit: hardness, format: "0", width: 12, help: "All that the waters brought, in the working volume: evaporation leaves it in the bath." },
    (r) => blankIf([`${r.here("bath")}=""`, `${r.here("workingVolume")}=""`],
      `1000*SUMIFS(${r.all("additions", "hardnessCarried")},${r.all("additions", "bath")},${r.here("bath")})/(${r.here("workingVolume")}*${litersInUnit(r)})`)),
  computed({ id: "bicarbonateBrought", label: "Bicarbonate brought so far", type: "number", unit: alkaliAdded, format: "0.000", width: 12, help: "All that the waters brought: each eq used up one of hydroxide." },
    (r) => blankIf([`${r.here("bath")}=""`], `SUMIFS(${r.all("additions", "bicarbonateCarried")},${r.all("additions", "bath")},${r.here("bath")})`)),
  computed({ id: "ratioFirst", label: "Total to free alkalinity, first", type: "number", format: "0.00", width: 11, help: "T by P of the bath's first titration." }, ratio("MINIFS")),
  computed({ id: "ratioLast", label: "Total to free alkalinity, last", type: "number", format: "0.00", width: 11, help: "T by P of the latest: a rise means soil soaps, and speaks for a change-out. The limit is the shop's own." }, ratio("MAXIFS")),
  computed({ id: "ageSignal", label: "Age", type: "text", width: 18, help: "Against the days on the sheet Shop." },
    (r) => blankIf([`${r.here("daysOpen")}=""`, `ISNUMBER(${r.here("closed")})`], `IF(${r.here("daysOpen")}>${r.named("bathLife")},"old: consider a change-out","")`)),
];
