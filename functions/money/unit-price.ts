import { unitPrice as priceOf } from "../../src/core/money/unit-price.ts";
import { moneyAmount, system } from "../arguments/arguments.ts";
import { inSystem } from "../arguments/in-system.ts";
import { quantity } from "../arguments/quantity-argument.ts";
import { defineFunction } from "../define-function.ts";

export const unitPrice = defineFunction({
  id: "UNITPRICE",
  category: "Money and stock",
  summary: "Price per gallon or liter of a pack.",
  arguments: [
    moneyAmount("pack_price", "price of the pack", "any currency"),
    quantity("pack_volume", { kind: "volume", help: "volume in the pack" }),
    system,
  ],
  result: {
    excelType: "number",
    dimensionality: "scalar",
    unit: "per US gal (US), per L (metric), per imperial gal (imperial)",
    help: "price per volume, in the currency of the price",
  },
  examples: [
    {
      formula: '=BATH.UNITPRICE(139,"5 US gal")',
      cells: [139, "5 US gal"],
      result: 27.8,
      tolerance: 1e-9,
      source: "139 / 5",
    },
  ],
  notes: ["Does not know tax, freight or deposit; put into the price what the invoice should carry."],
  source: "Pack price / pack volume.",
  compute: ([price, volume], call) => inSystem("price per volume", priceOf(price, volume), call),
});
