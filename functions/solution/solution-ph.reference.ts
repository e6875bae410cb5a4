import type { Reference } from "../reference/reference.ts";
import { equilibriumSource } from "../reference/sources.ts";
import { balances } from "./balances.ts";

export const solutionPhReference: Reference = {
  ...balances,
  source: equilibriumSource,
  cautions: [],
};
