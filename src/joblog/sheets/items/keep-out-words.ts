import type { LogRow } from "../../model/definition.ts";
import type { keepOutKinds } from "../../model/words.ts";

/**
 * Words by which a piece is known that must not go into an alkaline bath, or into any tank. The Items sheet flags
 * those on the sheet Shop, whose list starts with these; the item form asks about both, so that a list that lost one
 * lets no such piece pass unasked. They are English as people write it, singular and plural; a word that stands
 * inside another does not count ("tint", "leather", "misleading"). Common practice, no source.
 */
interface Words {
  /** How a word begins. */
  readonly beginnings: readonly string[];
  /** Whole words. */
  readonly words: readonly string[];
}

/** Metals that alkali attacks, alloys and finishes that hold or hide them. */
const softMetals: Words = {
  beginnings: [
    "alumin",
    "anodi",
    "babbitt",
    "die cast",
    "diecast",
    "dural",
    "galvan",
    "magnesium",
    "pewter",
    "solder",
    "spelter",
    "tinplate",
    "zamak",
    "zinc",
  ],
  words: [
    "brass",
    "britannia metal",
    "bronze",
    "german silver",
    "lead",
    "leaded",
    "leadlight",
    "leadlights",
    "nickel silver",
    "ormolu",
    "pot metal",
    "stained glass",
    "tin",
    "tinfoil",
    "tinned",
    "tins",
    "tole",
    "toleware",
    "white metal",
  ],
};

/** What burns, bursts or poisons in a heated tank. */
const hazards: Words = {
  beginnings: [
    "acetone",
    "aerosol",
    "ammonia",
    "ammunition",
    "batterie",
    "bleach",
    "butane",
    "chlorine",
    "diesel",
    "drain cleaner",
    "drain opener",
    "e cig",
    "ecig",
    "fire ext",
    "firecracker",
    "firework",
    "fuel",
    "gas can",
    "gas cylinder",
    "gasoline",
    "gunpowder",
    "kerosene",
    "lithium",
    "mercury",
    "oxygen",
    "paint can",
    "paint tin",
    "power bank",
    "powerbank",
    "propane",
    "solvent",
    "spray can",
    "spray paint",
    "turpentine",
    "vape",
  ],
  words: ["ammo", "battery", "can of paint", "cans of paint", "lighter", "lighters", "thinner", "thinners"],
};

/** Read over, since they name no metal and no hazard. */
export const harmlessPhrases = [
  "lead free",
  "lead swab",
  "lead test",
  "lead wipe",
  "no lead",
  "lighter soot",
  "lighter smoke",
  "lighter than",
  "thinner soot",
  "thinner than",
  "fuel oil s",
  "mercury glass",
] as const;

const listed = (
  { beginnings, words }: Words,
  kind: (typeof keepOutKinds)[number],
): readonly LogRow<"keepOutWords">[] => [
  ...beginnings.map((word) => ({ word, kind, counts: "beginning" })),
  ...words.map((word) => ({ word, kind, counts: "whole word" })),
];

/** The list that a new log starts with: a shop adds to it on the sheet Shop. */
export const usualKeepOutWords: readonly LogRow<"keepOutWords">[] = [
  ...listed(hazards, "hazard"),
  ...listed(softMetals, "metal"),
];

/** Stands between words: blanks at the ends of a text are lost in some program or other. */
export const mark = "_";

export const marked = (words: string): string => words.replaceAll(" ", mark);

/** What the column "Looked for" makes of a usual word. */
export const usualSought = ({ word, counts }: LogRow<"keepOutWords">): string =>
  `${mark}${marked(String(word))}${counts === "beginning" ? "" : mark}`;

/** What becomes a mark, so that words stand alone. */
export const betweenWords = [" ", ",", ".", ";", ":", "/", "(", ")", "-"] as const;
