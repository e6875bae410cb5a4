/** What a person picked, from the words of a list's options to an answer; undefined for "not answered" and for words that are no option. */
import * as z from "zod/mini";

import type { NameAnswer } from "./adopt-answers.ts";
import { adoptKinds, type AdoptTable } from "./adopt-kinds.ts";
import type { DoubtAnswer } from "./doubt-kinds.ts";
import type { DateOrder, DotTime } from "./read-moment.ts";

/** Marks an answer that is a word of the log. */
const wordMark = "use ";

export const wordOfUse = (use: string): string => wordMark + use;

export function wordOfName(answer: NameAnswer | undefined): string {
  return typeof answer === "object" ? wordOfUse(answer.use) : (answer ?? "");
}

const order = z.enum(["month first", "day first"]);
const dotTime = z.enum(["clock", "hours"]);
const doubt = z.enum(["take", "leave out"]);
const table = z.enum(adoptKinds.map((kind) => kind.table));
/** A row or column of a sheet, counted from 0. */
const place = z.pipe(z.string().check(z.regex(/^\d+$/)), z.transform(Number));
const name = z.union([
  z.enum(["new", "leave out"]),
  z.pipe(
    z.string().check(z.startsWith(wordMark)),
    z.transform((word): NameAnswer => ({ use: word.slice(wordMark.length) })),
  ),
]);

export const pickedOrder = (word: string): DateOrder | undefined => order.safeParse(word).data;
export const pickedDotTime = (word: string): DotTime | undefined => dotTime.safeParse(word).data;
export const pickedDoubt = (word: string): DoubtAnswer | undefined => doubt.safeParse(word).data;
export const pickedTable = (word: string): AdoptTable | undefined => table.safeParse(word).data;
export const pickedPlace = (word: string): number | undefined => place.safeParse(word).data;
export const pickedName = (word: string): NameAnswer | undefined => name.safeParse(word).data;
