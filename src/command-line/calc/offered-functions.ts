import { sheetFunctions } from "../../joblog/evaluate/sheet-functions.ts";

interface Offered {
  readonly least: number;
  readonly most: number;
  /** Whether it takes several cells as one argument; the others take single values. */
  readonly several?: true;
}

const any = Number.POSITIVE_INFINITY;

/** Excel's own functions that stand in a formula beside ours, with the number of their arguments. IF is worked out apart. */
const offeredFunctions = {
  ABS: { least: 1, most: 1 },
  AND: { least: 1, most: any },
  COUNT: { least: 1, most: any, several: true },
  FIND: { least: 2, most: 2 },
  INDEX: { least: 2, most: 3, several: true },
  INT: { least: 1, most: 1 },
  LEFT: { least: 1, most: 2 },
  LEN: { least: 1, most: 1 },
  LOWER: { least: 1, most: 1 },
  MAX: { least: 1, most: any, several: true },
  MID: { least: 3, most: 3 },
  MIN: { least: 1, most: any, several: true },
  NOT: { least: 1, most: 1 },
  OR: { least: 1, most: any },
  ROUND: { least: 2, most: 2 },
  SEARCH: { least: 2, most: 2 },
  SMALL: { least: 2, most: 2, several: true },
  SUBSTITUTE: { least: 3, most: 3 },
  SUM: { least: 1, most: any, several: true },
  SUMPRODUCT: { least: 1, most: any, several: true },
} as const satisfies Partial<Record<keyof typeof sheetFunctions, Offered>>;

export type OfferedName = keyof typeof offeredFunctions;

export const offeredNames = Object.keys(offeredFunctions) as readonly OfferedName[];

export const limitsOf = (name: OfferedName): Offered => offeredFunctions[name];
