import { expect, it } from "vitest";

import { moneyIn } from "../../../src/advice/wording/figures.ts";

it.each([
  [116.145, "USD", "$116.15"],
  [1234.5, "EUR", "€1,234.50"],
  [-12.5, "GBP", "-£12.50"],
  [116.15, undefined, "116.15"],
  [116.15, "dollars", "116.15"],
])("%d in %s is %s", (value, currency, words) => {
  expect(moneyIn(value, currency)).toBe(words);
});
