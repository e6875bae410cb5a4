import { checkPH } from "../../chemistry/limits.ts";
import type { EquivalentsPerKilogram, PH } from "../../units/quantity.ts";
import type { AcidName } from "./acid.ts";
import { acidTo } from "./acid-to.ts";
import type { BathQuestion } from "./bath-question.ts";
import { anchoredBaths } from "./bath-question.ts";
import type { Estimate } from "./estimate.ts";
import { answersOf, estimateFrom } from "./estimate.ts";
import { titratedBath } from "./titrated-bath.ts";

/**
 * Acid that neutralizes a bath, eq/kg as in `acidTo`; the question's baseline is the reading before it.
 * Without a titration the figure is a minimum: soil acids that the builder has bound are not seen in pH.
 * `alkalinity` is the acid a titration to pH 4.5 took, eq/kg. Refusals as of `anchoredBaths`, `acidTo`.
 */
export function estimateAcidTo(
  question: BathQuestion,
  acid: AcidName,
  target: PH,
  alkalinity?: EquivalentsPerKilogram,
): Estimate {
  checkPH(target, "Target pH");
  return estimateFrom(
    answersOf(anchoredBaths(question), (bath) => {
      const totals = alkalinity === undefined ? bath.opening : titratedBath(bath, alkalinity);
      return [acidTo(totals, bath.temperature, acid, target, bath.solids)];
    }),
  );
}
