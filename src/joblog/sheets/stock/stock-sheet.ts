import { cautionsOfSheet } from "../../../core/safety/caution-places.ts";
import type { SheetDefinition } from "../../model/definition.ts";
import { stockBalance } from "./stock-balance.ts";
import { stockMoves } from "./stock-moves.ts";

export const stockSheet: SheetDefinition = {
  id: "stock",
  name: "Stock",
  title: "Stock of concentrates",
  purpose: "What is on the shelf by the book and by count, how long it lasts and when to reorder.",
  caution: `Keep pails closed and apart from acids.\n${cautionsOfSheet("stock")}`,
  fields: [],
  tables: [stockBalance, stockMoves],
  arrangement: "stacked",
  tabColor: "#8C6A4F",
  pagesWide: 2,
  orientation: "landscape",
};
