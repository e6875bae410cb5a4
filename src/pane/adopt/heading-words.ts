import type { ColumnId } from "../../joblog/formula/log-names.ts";
import type { AdoptTable } from "./adopt-kinds.ts";

type AdoptColumn = { readonly [Table in AdoptTable]: ColumnId<Table> }[AdoptTable];

/** Words that home-made sheets write over columns, by the log's column; common practice, no source. */
const words = {
  when: ["when", "date", "day", "datetime", "time"],
  bath: ["bath", "fill", "tank"],
  claim: ["claim", "job", "customer", "file"],
  ph: ["ph"],
  temperature: ["temp", "temperature", "sample"],
  purpose: ["purpose", "why"],
  meter: ["meter", "probe"],
  level: ["level", "depth"],
  conductivity: ["conductivity", "cond"],
  pTitre: ["p"],
  tTitre: ["t"],
  initials: ["initials", "by", "who", "tech", "technician", "operator"],
  note: ["note", "notes", "comment", "comments", "remarks", "serial"],
  kind: ["kind", "type", "what"],
  amount: ["amount", "added", "gal", "gallons", "liters", "dose", "volume", "concentrate", "conc", "chemical"],
  water: ["water"],
  account: ["account", "charge"],
  phBefore: ["before"],
  phAfter: ["after"],
  minutesMixed: ["mixed", "mix"],
  levelBefore: ["before"],
  levelAfter: ["after"],
  baskets: ["baskets", "basket", "racks"],
  soil: ["soil", "soot", "grade"],
  minutes: ["minutes", "min", "cycle"],
  area: ["area", "surface"],
  rework: ["rework", "redo"],
  id: ["tag", "no", "nr", "number", "barcode"],
  room: ["room", "location"],
  quantity: ["pieces", "pcs", "qty", "quantity", "count", "ea", "each"],
  item: ["item", "description", "desc", "what", "piece", "article"],
  material: ["material"],
  condition: ["condition"],
  route: ["route", "method"],
  outcome: ["outcome", "result", "disposition", "status"],
  reason: ["reason", "code"],
  photo: ["photo", "picture"],
  replacementValue: ["replacement", "replace", "value", "rcv"],
  restoreCost: ["restore", "restoration", "cleaning"],
  strength: ["strength", "ratio", "dilution"],
  surface: ["surface", "material"],
  method: ["method"],
  loss: ["loss", "event", "peril"],
  insurer: ["insurer", "carrier", "insurance", "company"],
  adjuster: ["adjuster"],
  arrived: ["arrived", "received"],
  policy: ["policy"],
  owner: ["owner", "insured", "name", "customer", "client"],
  lossAddress: ["address"],
  lossDate: ["loss", "date"],
  tank: ["tank"],
  concentrate: ["concentrate", "product", "chemical"],
  opened: ["opened", "filled", "started", "date"],
  closed: ["closed", "dumped", "drained", "emptied"],
  baseline: ["baseline"],
  date: ["date", "day"],
  document: ["document", "invoice", "bill", "ticket"],
  price: ["price", "cost"],
  lot: ["lot", "batch"],
  bufferLot: ["lot", "lots"],
  dwell: ["dwell"],
  result: ["result", "pass"],
} as const satisfies { readonly [Id in AdoptColumn]?: readonly string[] };

/** Where a table has other words than its neighbors for a column of the same name. */
export const wordsInTable: Readonly<Partial<Record<AdoptTable, Readonly<Partial<Record<string, readonly string[]>>>>>> =
  {
    costLines: { amount: ["amount", "cost", "total", "price"], what: ["what", "description", "item", "for"] },
    stockMoves: { amount: ["amount", "qty", "quantity", "gal", "gallons", "liters", "volume"], when: ["day", "date"] },
    baths: { bath: ["bath", "fill"] },
  };

/** Words that speak for a column only where no other claims the heading: "Item" beside "Description" is a number. */
export const weakWords: Readonly<Record<string, readonly string[] | undefined>> = {
  id: ["item"],
  restoreCost: ["cost"],
  replacementValue: ["total", "extended"],
};

/** Words that say more than others of their column: "Item description" is a description. */
export const strongWords: readonly string[] = ["description", "desc", "what"];

/** Of two pH columns, the later one. */
export const laterWords: readonly string[] = ["pm", "afternoon", "evening", "second", "2nd"];
export const earlierWords: readonly string[] = ["am", "morning", "first", "1st"];

export const unitWords: readonly string[] = ["unit", "units", "uom"];

/** Said beside "water" where a column holds amounts of it and not its name. */
export const amountWords: readonly string[] = [
  ...["amount", "added", "gal", "gallons", "l", "liters", "litres", "ml", "qty", "qt", "oz", "volume"],
];

export const wordsOfColumn: Readonly<Record<string, readonly string[] | undefined>> = words;

export const headingsKnown: ReadonlySet<string> = new Set(Object.values(words).flat());

/** A column that holds nothing but times of day. */
export const timeWords: readonly string[] = ["time", "hour", "clock"];
