import { topUpCautions } from "../reference/cautions.ts";
import type { Reference } from "../reference/reference.ts";
import { equilibriumSource } from "../reference/sources.ts";
import { topUpWorking } from "./top-up-working.ts";

export const topUpRangeReference: Reference = {
  symbols: [...topUpWorking.symbols, '"low, high:  " v "  of  " r ± δ', "a = min(v, h · v_0)"],
  where: {
    ...topUpWorking.where,
    δ: "meter_accuracy",
    a: "first addition",
    h: "house_share",
  },
  source: `${equilibriumSource}; first addition: common practice, no source`,
  cautions: topUpCautions,
};
