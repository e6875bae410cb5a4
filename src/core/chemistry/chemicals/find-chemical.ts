import { DomainError } from "../../limits/domain-error.ts";
import { americanSpelling } from "../../text/american-spelling.ts";
import type { Chemical } from "./chemicals.ts";
import { chemicals } from "./chemicals.ts";

function key(word: string): string {
  return americanSpelling(word)
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[\s.·*,-]/g, "");
}

const byWord = new Map<string, Chemical>();
for (const one of chemicals) {
  for (const word of [one.formula, one.name, ...one.spellings]) byWord.set(key(word), one);
}

/**
 * The substance that a formula or name stands for; throws `invalid` with the list of known ones. None is guessed: bleach,
 * NaOCl, is a letter from table salt.
 */
export function findChemical(word: string): Chemical {
  const found = byWord.get(key(word));
  if (found !== undefined) return found;
  const known = chemicals.map((one) => one.formula).join(", ");
  throw new DomainError(
    "invalid",
    `“${word}” is not a component this chemistry knows. Known, by formula or name: ${known}`,
  );
}
