import type { SheetDefinition } from "../../model/definition.ts";
import { stockBalance } from "./stock-balance.ts";
import { stockMoves } from "./stock-moves.ts";

export const stockSheet: SheetDefinition = {
  id: "stock",
  name: "Stock",
  title: "Stock of concentrates",
  purpose: "What is on the shelf by the book and by count, how long it lasts and when to reorder.",
  caution:
    "A concentrate at pH 12.5 or over that is thrown away is hazardous waste (D002, 40 CFR 261.22). Keep pails closed, labeled and apart from acids; never mix with bleach, ammonia or acid cleaners.",
  fields: [],
  tables: [stockBalance, stockMoves],
  arrangement: "stacked",
  tabColor: "#8C6A4F",
  pagesWide: 1,
  orientation: "landscape",
};
