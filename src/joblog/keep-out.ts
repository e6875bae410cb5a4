import { helper } from "./columns.ts";
import type { ComputedColumn } from "./definition.ts";
import { blankIf, quoted } from "./formulas.ts";
import { amphotericStarts, amphotericWords, neverInTank } from "./item-standing.ts";

function found(text: string, words: readonly string[]): string {
  return `OR(${words.map((word) => `ISNUMBER(SEARCH(${quoted(word)},${text}))`).join(",")})`;
}

/** Judged by the words of the line only, and only where the route is a bath. */
export const keepOut: readonly ComputedColumn[] = [
  helper({ id: "keepOut", label: "Keep out", type: "text", width: 14, help: "Metal that alkali attacks, or a hazard, by the words typed." },
    (r) => {
      const words = `" "&SUBSTITUTE(SUBSTITUTE(${r.here("material")},","," "),"-"," ")&" "`;
      const metal = `OR(${found(r.here("material"), amphotericWords)},${found(words, amphotericStarts.map((word) => ` ${word} `))})`;
      const hazard = found(`${r.here("item")}&" "&${r.here("material")}`, neverInTank);
      return blankIf([`${r.here("route")}<>"bath"`], `IF(${metal},"keep out of alkali: metal",IF(${hazard},"keep out of the tank: hazard",""))`);
    }),
  helper({ id: "inBath", label: "In a bath", type: "text", width: 14, help: "What speaks against the bath it is meant for." },
    (r) => {
      const claimsInBath = `COUNTIFS(${r.all("loads", "bath")},${r.here("bath")},${r.all("loads", "firstOfClaim")},1)`;
      return blankIf([`${r.here("route")}<>"bath"`], `IF(${r.here("keepOut")}<>"",${r.here("keepOut")},IF(${r.here("pre1980")}<>"yes","",IF(${r.here("bath")}="","isolate: bath of its own",IF(${claimsInBath}>1,"isolate: this bath is shared",""))))`);
    }),
];
