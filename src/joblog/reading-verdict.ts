import { computed } from "./columns.ts";
import type { ComputedColumn, References } from "./definition.ts";
import { after, at, blankIf, quoted, upTo, where } from "./formulas.ts";
import { volume } from "./units-of.ts";
import { phCorrected } from "./reading-meter.ts";
import { bench, verdictChanged } from "./words.ts";

function ofBath(r: References, column: string): string {
  return at(r, "baths", column, r.here("bathRow"));
}

/** Top-up figures only where the verdict asks for one and the sample was near the baseline's temperature. */
function topUp(id: string, label: string, place: number, help: string, tooWarm: string): ComputedColumn {
  return computed({ id, label, type: "number", unit: volume, format: "0.000", width: 10, help }, (r) => {
    // The workbench's grid works out what an IF passes over: without a dose the function says no at once.
    const range = `BATH.TOPUPRANGE(IF(${r.here("verdict")}="top up",${ofBath(r, "openingDose")},""),${ofBath(r, "baseline")},${r.here("phCorrected")},${ofBath(r, "builderUsed")},${r.here("temperature")},${ofBath(r, "alkalinityUsed")},${r.named("houseShare")},${r.named("unitSystem")})`;
    const gap = `ABS(${r.here("temperature")}-${ofBath(r, "baselineTemperature")})`;
    return blankIf([`${r.here("verdict")}<>"top up"`, `${r.here("bathRow")}=""`],
      `IF(${ofBath(r, "openingDose")}="","",IF(${gap}>${r.named("temperatureGap")},${quoted(tooWarm)},INDEX(${range},1,${String(place)})))`);
  });
}

const judgement = (r: References, ph: string, baseline: string): string =>
  `BATH.VERDICT(${r.here(ph)},${ofBath(r, baseline)},${ofBath(r, "dropUsed")},${ofBath(r, "baselineTemperature")},${r.here("temperature")},${ofBath(r, "builderUsed")},${ofBath(r, "alkalinityUsed")},${r.named("unitSystem")})`;

/** How a verdict begins on a row that the log cannot use. */
const unread = "not counted";

/** What a reading says about its bath: stands beside pH and temperature. */
export const readingVerdict: readonly ComputedColumn[] = [
  computed({ id: "trigger", label: "Trigger here", type: "number", format: "0.00", width: 8, help: "The trigger as this bath would read it at this sample's temperature." },
    (r) => blankIf([`${r.here("bathRow")}=""`, `NOT(ISNUMBER(${r.here("temperature")}))`, `NOT(ISNUMBER(${r.here("ph")}))`, `${r.here("purpose")}="rinse"`],
      `IF(${ofBath(r, "baseline")}="","",BATH.TRIGGER(${ofBath(r, "baseline")},${ofBath(r, "dropUsed")},${ofBath(r, "baselineTemperature")},${r.here("temperature")},${ofBath(r, "builderUsed")},${ofBath(r, "alkalinityUsed")},${r.named("unitSystem")}))`)),
  computed({ id: "verdict", label: "Verdict", type: "text", width: 15, help: "Hold, near, top up, or re-read where the temperature leaves it open." },
    (r) => {
      const uncounted = `"${unread}: "&IF(NOT(ISNUMBER(${r.here("temperature")})),"temperature missing",IF(${r.here("benchAtTime")}<>${quoted(bench.accepted)},${r.here("benchAtTime")},"older than the opening dose"))`;
      const judged = `IF(${r.here("purpose")}="baseline",IF(${r.here("counted")}=1,"baseline",${uncounted}),` +
        `IF(${ofBath(r, "baseline")}="","no baseline yet",IF(NOT(ISNUMBER(${r.here("temperature")})),"temperature missing",${judgement(r, "phCorrected", "baseline")})))`;
      const lacks = (test: string, word: string, otherwise: string): string => `IF(${test},"${unread}: ${word}",${otherwise})`;
      return blankIf([`${r.here("bath")}=""`, `${r.here("ph")}=""`, `${r.here("purpose")}=""`, `${r.here("purpose")}="rinse"`],
        lacks(`${r.here("bathRow")}=""`, "bath missing", lacks(`NOT(ISNUMBER(${r.here("ph")}))`, "pH is no number", lacks(`NOT(ISNUMBER(${r.here("when")}))`, "when is no date", judged))));
    }),
  topUp("firstAddition", "First addition", 4, "Add this, mix, read again before adding more.", "re-read cooled"),
];

/** What the reading said before the meter's next check was known. */
export const readingDrift: readonly ComputedColumn[] = [
  phCorrected,
  computed({ id: "verdictAsRead", label: "Verdict as read", type: "text", width: 15, help: "What the same reading says with the meter's drift left in, against the baseline as read." },
    (r) => {
      const unjudged = [`${r.here("verdict")}=""`, `LEFT(${r.here("verdict")},${String(unread.length)})="${unread}"`, `${r.here("purpose")}="baseline"`, `NOT(ISNUMBER(${r.here("temperature")}))`];
      const same = `IF(${ofBath(r, "baseline")}="",TRUE,AND(${r.here("ph")}=${r.here("phCorrected")},${ofBath(r, "baseline")}=${ofBath(r, "baselineAsRead")}))`;
      return `IF(OR(${unjudged.join(",")}),${r.here("verdict")},IF(${same},${r.here("verdict")},${judgement(r, "ph", "baselineAsRead")}))`;
    }),
  computed({ id: "flag", label: "Drift", type: "text", width: 30, help: "Whether the meter's drift had hidden something." },
    (r) => blankIf([`${r.here("verdictAsRead")}=${r.here("verdict")}`], `${quoted(verdictChanged)}&": "&${r.here("verdict")}&" instead of "&${r.here("verdictAsRead")}`)),
];

/** The figures behind it, to the right of what a person types. */
export const readingFigures: readonly ComputedColumn[] = [
  computed({ id: "phAtBaseline", label: "pH at the baseline's temperature, about", type: "number", format: "0.00", width: 20, help: "What this sample would read there with a perfect meter, had the bath lost nothing. For a hot sample of a used bath it is often a little high: cool it to be sure." },
    (r) => blankIf([`${r.here("bathRow")}=""`, `NOT(ISNUMBER(${r.here("temperature")}))`, `NOT(ISNUMBER(${r.here("ph")}))`, `${r.here("purpose")}="rinse"`],
      `IF(${ofBath(r, "baseline")}="","",BATH.PHAT(${r.here("phCorrected")},${r.here("temperature")},${ofBath(r, "baselineTemperature")},${ofBath(r, "builderUsed")},${ofBath(r, "alkalinityUsed")},${r.named("unitSystem")}))`)),
  topUp("topUpLow", "Top-up, low", 1, "Lowest likely top-up back to the baseline.", ""),
  topUp("topUpBest", "Top-up, best", 2, "Best estimate back to the baseline.", ""),
  topUp("topUpHigh", "Top-up, high", 3, "Highest likely top-up back to the baseline.", ""),
  computed({ id: "alkalinityRatio", label: "Total to free alkalinity", type: "number", format: "0.00", width: 11, help: "Total by free alkalinity, where both were titrated: climbs as soil soaps gather." },
    (r) => `IF(AND(ISNUMBER(${r.here("pTitre")}),ISNUMBER(${r.here("tTitre")})),IF(${r.here("pTitre")}>0,${r.here("tTitre")}/${r.here("pTitre")},""),"")`),
  computed({ id: "benchAtTime", label: "Bench tests then", type: "text", width: 18, help: "How the bath's bench tests stood when this was read." },
    (r) => {
      const since = where([
        [r.all("benchTests", "bath"), r.here("bath")],
        [r.all("benchTests", "when"), after(r.here("lastConcentrate"))],
        [r.all("benchTests", "when"), upTo(r.here("when"))],
      ]);
      const inForce = `COUNTIFS(${since},${r.all("benchTests", "supersededAt")},${after(r.here("when"))},${r.all("benchTests", "result")},"<>pass")`;
      return blankIf([`${r.here("lastConcentrate")}=""`],
        `IF(${r.here("lastConcentrate")}=0,${quoted(bench.noCharge)},IF(COUNTIFS(${since})=0,${quoted(bench.untested)},IF(${inForce}>0,${quoted(bench.refused)},${quoted(bench.accepted)})))`);
    }),
];
