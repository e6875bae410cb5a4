import { temperatureBand } from "./temperature-band.ts";
import { topUpBand } from "./top-up-band.ts";
import type { BathModel } from "./bath-model.ts";

/** The model that answers: hydroxide exactly, every other builder by bands around published baths. */
export const currentModel: BathModel = { topUpShare: topUpBand, phAt: temperatureBand };
