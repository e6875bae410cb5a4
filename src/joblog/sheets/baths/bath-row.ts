import { positionOf } from "../../formula/lookups.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";

/** Tables whose rows name a bath. */
type OfBath = "additions" | "benchTests" | "care" | "costLines" | "loads" | "readings" | "releases" | "shares";

/** Where the row's bath stands in Baths. */
export const bathRow: ComputedColumn = columnsOf<OfBath>().helper(
  { id: "bathRow", label: "Bath row", type: "whole number", format: "0", width: 8, help: "Position in Baths." },
  ({ bath }, { baths }) => positionOf(bath, baths.bath),
);
