/** Which caution stands where: at its step in a form, on the sheet of the step, and with the functions of the step. */
import { type Caution, type CautionId, cautions } from "./cautions.ts";

interface FormCautions {
  /** Their short forms stand over the fields. */
  readonly first: readonly CautionId[];
  /** Told with the full text of the first, when asked. */
  readonly more: readonly CautionId[];
}

/** By the id of the form. */
export const formCautions: Readonly<Partial<Record<string, FormCautions>>> = {
  charge: {
    first: ["alkali", "intoWater", "neverMix", "labelStrength"],
    more: ["eyewash", "scald", "heatersOff", "softMetals", "bottles", "safetyFile"],
  },
  "bench test": { first: ["alkali", "bottles", "neverMix"], more: ["eyewash", "softMetals", "soot"] },
  baseline: { first: ["atTank", "scald"], more: ["alkali", "handsOut"] },
  reading: { first: ["atTank", "scald"], more: ["alkali", "handsOut"] },
  addition: {
    first: ["alkali", "intoBath", "neverMix", "labelStrength"],
    more: ["eyewash", "scald", "handsOut", "bottles"],
  },
  "level make-up": { first: ["alkali", "heatersOff", "neverMix"], more: ["intoBath", "eyewash", "scald", "handsOut"] },
  load: { first: ["handsOut", "atTank", "scald"], more: ["alkali", "softMetals", "soot", "neverInTank"] },
  "count in": { first: ["soot"], more: ["neverInTank"] },
  item: { first: ["softMetals", "soot", "neverInTank"], more: ["toxicSludge"] },
  care: {
    first: ["heatersOff", "atTank", "toxicSludge", "neverMix"],
    more: ["alkali", "eyewash", "handsOut", "scald", "soot"],
  },
  "meter check": { first: ["electrode"], more: ["neverMix"] },
  "change-out": {
    first: ["heatersOff", "permit"],
    more: ["atTank", "scald", "acidIntoBath", "neverMix", "corrosiveWaste", "toxicSludge"],
  },
  release: {
    first: ["acidIntoBath", "heatersOff", "neverMix", "permit"],
    more: ["alkali", "eyewash", "scald", "corrosiveWaste", "toxicSludge"],
  },
  "stock move": { first: ["corrosiveWaste", "bottles", "neverMix"], more: ["alkali", "eyewash", "safetyFile"] },
  shop: { first: ["eyewash", "safetyFile"], more: ["alkali", "neverMix", "bottles"] },
};

/** By the id of the sheet. */
const sheetCautions = {
  job: ["softMetals", "soot", "neverInTank"],
  shop: ["eyewash", "safetyFile"],
  baths: ["alkali", "intoWater", "neverMix", "labelStrength", "scald", "heatersOff"],
  additions: ["alkali", "intoBath", "neverMix", "labelStrength", "scald", "heatersOff"],
  benchTests: ["alkali", "bottles", "neverMix"],
  readings: ["atTank", "handsOut", "scald"],
  loads: ["handsOut", "atTank", "scald", "soot"],
  items: ["softMetals", "soot", "neverInTank"],
  care: ["heatersOff", "atTank", "handsOut", "scald", "toxicSludge", "soot", "neverMix"],
  meter: ["electrode", "neverMix"],
  release: ["permit", "acidIntoBath", "heatersOff", "neverMix", "corrosiveWaste", "toxicSludge"],
  stock: ["corrosiveWaste", "bottles", "neverMix"],
  notes: ["alkali", "neverMix"],
} as const satisfies Readonly<Record<string, readonly CautionId[]>>;

/** By what someone does with the result. */
const functionCautions = {
  titrating: ["alkali"],
  charging: ["alkali", "eyewash", "intoWater", "neverMix", "softMetals", "labelStrength"],
  toppingUp: ["alkali", "eyewash", "intoBath", "neverMix", "scald", "labelStrength"],
  neutralizing: ["acidIntoBath", "eyewash", "heatersOff", "neverMix", "permit"],
  discharging: ["permit", "corrosiveWaste", "toxicSludge"],
  heating: ["scald", "heatersOff"],
} as const satisfies Readonly<Record<string, readonly CautionId[]>>;

const theCautions = (ids: readonly CautionId[]): readonly Caution[] => ids.map((id) => cautions[id]);

/** What a form or view says of safety; nothing where nobody gets near a bath or a chemical. */
export function cautionsOfForm(
  form: string,
): { readonly first: readonly Caution[]; readonly all: readonly Caution[] } | undefined {
  const said = formCautions[form];
  return said === undefined
    ? undefined
    : { first: theCautions(said.first), all: theCautions([...said.first, ...said.more]) };
}

/** The cautions of a sheet in one text, each on lines of its own. */
export const cautionsOfSheet = (sheet: keyof typeof sheetCautions): string =>
  theCautions(sheetCautions[sheet])
    .map(({ text }) => text)
    .join("\n");

export const cautionsOfFunctions = (use: keyof typeof functionCautions): readonly Caution[] =>
  theCautions(functionCautions[use]);

/** The forms that show a caution, for whoever lists them all. */
export const formsWith = (id: CautionId): readonly string[] =>
  Object.entries(formCautions).flatMap(([form, said]) =>
    said !== undefined && [...said.first, ...said.more].includes(id) ? [form] : [],
  );
