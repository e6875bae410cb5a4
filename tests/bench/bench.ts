import { benchCalls } from "./calls.ts";
import { benchChemistry } from "./chemistry.ts";
import { benchColdStart } from "./cold-start.ts";
import { benchRecalculation } from "./few-calls.ts";
import { benchRollUp } from "./roll-up.ts";
import { benchTrips } from "./trips.ts";
import { benchUnits } from "./unit-packages.ts";
import { benchWorkbench } from "./workbench.ts";

/** All speeds and sizes in one run, after `npm run build` and `npm run command-line`. Figures depend on the machine and on what else it does. */
benchUnits();
benchCalls();
benchChemistry();
benchRecalculation();
await benchColdStart();
await benchTrips();
await benchRollUp();
await benchWorkbench();
