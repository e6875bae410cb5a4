import { joined, rounded } from "./arithmetic.ts";
import { when } from "./choices.ts";
import { isNoNumber } from "./conditions.ts";
import type { Expression } from "./expression.ts";

/**
 * A tested hardness or alkalinity with its unit, as our functions want it: a bare 0 may be a blank cell, and a bare 18
 * may be grains. Two decimals, since three after a decimal comma would read like thousands.
 */
export const inMilligrams = (tested: Expression): Expression =>
  when(isNoNumber(tested), tested).otherwise(joined(rounded(tested, 2), " mg/L"));
