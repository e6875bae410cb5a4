import fc from "fast-check";

import { randomSeed, runs } from "./random-runs.ts";

fc.configureGlobal({ seed: randomSeed, ...runs(100) });
