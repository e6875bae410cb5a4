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
  note: ["note", "notes", "comment", "comments", "remarks"],
  kind: ["kind", "type", "what"],
  amount: ["amount", "added", "gal", "gallons", "liters", "dose", "volume"],
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
  id: ["item", "tag", "no", "number"],
  room: ["room", "location"],
  quantity: ["pieces", "qty", "quantity", "count"],
  item: ["item", "description", "what", "piece"],
  material: ["material"],
  condition: ["condition"],
  route: ["route", "method"],
  outcome: ["outcome", "result", "disposition"],
  reason: ["reason", "code"],
  photo: ["photo", "picture"],
  replacementValue: ["replacement", "value", "rcv"],
  restoreCost: ["cost", "restore"],
  strength: ["strength", "ratio", "dilution"],
  surface: ["surface", "material"],
  method: ["method"],
  dwell: ["dwell"],
  result: ["result", "pass"],
} as const satisfies { readonly [Id in AdoptColumn]?: readonly string[] };

export const wordsOfColumn: Readonly<Record<string, readonly string[] | undefined>> = words;

export const headingsKnown: ReadonlySet<string> = new Set(Object.values(words).flat());

/** A column that holds nothing but times of day. */
export const timeWords: readonly string[] = ["time", "hour", "clock"];
