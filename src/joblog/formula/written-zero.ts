import { when } from "./choices.ts";
import { equal } from "./conditions.ts";
import type { Expression } from "./expression.ts";

/** A bare 0 may be a blank cell to a function of ours; a tested 0 says its unit. */
export const withWrittenZero = (tested: Expression): Expression => when(equal(tested, 0), "0 mg/L").otherwise(tested);
