import { positionOf } from "../../formula/lookups.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn } from "../../model/definition.ts";

/** Where the row's claim stands in Claims. */
export const claimRow: ComputedColumn = columnsOf<"costLines" | "loads" | "shares">().helper(
  { id: "claimRow", label: "Claim row", type: "whole number", format: "0", width: 8, help: "Position in Claims." },
  ({ claim }, { claims }) => positionOf(claim, claims.claim),
);
