import { topUpCautions } from "../reference/cautions.ts";
import type { Reference } from "../reference/reference.ts";
import { equilibriumSource } from "../reference/sources.ts";
import { topUpWorking } from "./top-up-working.ts";

export const topUpTableReference: Reference = {
  ...topUpWorking,
  source: equilibriumSource,
  cautions: topUpCautions,
};
