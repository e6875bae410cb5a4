import { computed } from "./columns.ts";
import type { ComputedColumn } from "./definition.ts";
import { blankIf, quoted } from "./formulas.ts";
import { itemStandings } from "./words.ts";

/** What became of the pieces; the counts by claim add these words up. */
export const itemStanding: ComputedColumn =
  computed({ id: "standing", label: "Status", type: "text", width: 18, help: "What became of it; a piece not restorable asks for its reason code." },
    (r) => {
      const restored = `IF(${r.here("route")}="hand",${quoted(itemStandings.handCleaned)},IF(${r.here("route")}="specialist",${quoted(itemStandings.specialist)},${quoted(itemStandings.restored)}))`;
      const lost = `IF(${r.here("reason")}="",${quoted(itemStandings.reasonMissing)},${quoted(itemStandings.notRestorable)})`;
      return blankIf([`AND(${r.here("id")}="",${r.here("claim")}="",${r.here("item")}="")`],
        `IF(${r.here("outcome")}="",${quoted(itemStandings.pending)},IF(${r.here("outcome")}="restored",${restored},IF(${r.here("outcome")}="not restorable",${lost},IF(${r.here("outcome")}="returned uncleaned",${quoted(itemStandings.returned)},${quoted(itemStandings.unknown)}))))`);
    });

/** Asked only where the insurer has agreed to a share; there is no usual one. */
export const economicTest: ComputedColumn =
  computed({ id: "economic", label: "Economic test", type: "text", width: 16, help: "Cost to restore against the agreed share of the replacement value (Shop sheet); blank until a share is agreed." },
    (r) => blankIf([`NOT(ISNUMBER(${r.named("economicShare")}))`, `NOT(ISNUMBER(${r.here("restoreCost")}))`, `NOT(ISNUMBER(${r.here("replacementValue")}))`],
      `IF(${r.here("restoreCost")}<${r.named("economicShare")}*${r.here("replacementValue")},"within the share","over the share")`));

/** Metals that alkali attacks, as people write them; found anywhere in the material. */
export const amphotericWords = ["aluminum", "aluminium", "zinc", "galvan", "pewter", "solder", "die-cast", "die cast"] as const;

/** Short words that stand inside others ("tint", "leather" do not count). */
export const amphotericStarts = ["tin", "tinplate", "tinned", "lead", "leaded"] as const;

export const neverInTank = ["batter", "aerosol", "fuel", "gasoline", "lighter", "paint tin", "paint can", "cans of paint"] as const;

/** The one thing to look at first, in words. */
export const itemCheck: ComputedColumn =
  computed({ id: "check", label: "Check", type: "text", width: 30, help: "What is missing or must not go into the bath; blank where nothing is. It knows the words typed, not the piece." },
    (r) => {
      const asked = `IF(${r.here("standing")}=${quoted(itemStandings.reasonMissing)},"give a reason code",IF(AND(${r.here("outcome")}="not restorable",${r.here("reasonText")}=""),"give the reason in a sentence",IF(AND(${r.here("outcome")}="restored",${r.here("route")}="none"),"give a route: restored how?",IF(AND(${r.here("outcome")}="restored",${r.here("route")}="bath",${r.here("bath")}=""),"give the bath",""))))`;
      return blankIf([`${r.here("standing")}=""`],
        `IF(${r.here("claim")}="","claim missing",IF(NOT(ISNUMBER(${r.here("quantity")})),"give the pieces",IF(${r.here("inBath")}<>"",${r.here("inBath")},${asked})))`);
    });
