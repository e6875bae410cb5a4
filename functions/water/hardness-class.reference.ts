import type { Reference } from "../reference/reference.ts";

export const hardnessClassReference: Reference = {
  symbols: [],
  where: {},
  source: "US Geological Survey; Water Quality Association",
  cautions: [],
};
