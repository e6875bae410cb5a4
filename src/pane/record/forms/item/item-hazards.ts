import { rowsOfBath } from "../../../../advice/bath-facts.ts";
import type { FilledFields } from "../../../../advice/filled-fields.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import { yesNo } from "../../../../joblog/model/words.ts";
import { amphotericStarts, amphotericWords, neverInTank } from "../../../../joblog/sheets/items/item-standing.ts";

const [yes] = yesNo;

const has = (text: string, words: readonly string[]): boolean => words.some((word) => text.includes(word));

/** Whether a material is named that alkali attacks, by the same words as the Items sheet. */
function attackedByAlkali(material: string): boolean {
  const text = material.toLowerCase();
  return (
    has(text, amphotericWords) || text.split(/[\s,-]+/).some((word) => amphotericStarts.some((metal) => metal === word))
  );
}

/** Asked before a piece goes into an alkaline bath that its material, its contents or its age speak against. */
export function bathDoubts(
  filled: FilledFields<ColumnId<"items">>,
  material: string,
  what: string,
  old: string | undefined,
  context: LogContext,
): readonly string[] {
  if (filled.text("route") !== "bath") return [];
  const bath = filled.text("bath");
  const claims =
    bath === undefined ? [] : [...new Set(rowsOfBath(context.log, "loads", bath).map((row) => row.cells.claim))];
  const shared = claims.some((claim) => claim !== filled.text("claim"));
  return [
    ...(attackedByAlkali(material)
      ? [
          `"${material}": alkali attacks aluminum, zinc, galvanized, tin and lead and their alloys, and hydrogen forms. Keep it out of the bath, unless you know it is none of these.`,
        ]
      : []),
    ...(has(`${what} ${material}`.toLowerCase(), neverInTank)
      ? [
          `"${what}": batteries, aerosols, paint and fuel never go into a tank; they go to hazardous-waste collection. Is it none of these?`,
        ]
      : []),
    ...(old === yes && shared
      ? [
          "Old paint or glaze may hold lead, and other claims share this bath. Has it been wipe-tested, and does it get a bath of its own?",
        ]
      : []),
  ];
}
