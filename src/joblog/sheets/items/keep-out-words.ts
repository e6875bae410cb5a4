/**
 * Words by which a piece is known that must not go into an alkaline bath, or into any tank. The Items sheet flags
 * them and the item form asks about them. They are English as people write it, singular and plural; a word that
 * stands inside another does not count ("tint", "leather", "misleading"). Common practice, no source.
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
    "diesel",
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
    "paint can",
    "paint tin",
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

/** As they are looked for in a text whose words all stand between blanks. */
const soughtOf = ({ beginnings, words }: Words): readonly string[] => [
  ...beginnings.map((word) => ` ${word}`),
  ...words.map((word) => ` ${word} `),
];

export const soughtMetals = soughtOf(softMetals);

export const soughtHazards = soughtOf(hazards);

/** What becomes a blank, so that words stand alone. */
export const betweenWords = [",", ".", ";", ":", "/", "(", ")", "-"] as const;
