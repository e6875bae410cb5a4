import { catalogue } from "../../functions/catalogue.ts";
import { withExamples } from "./by-example.ts";
import { charge } from "./charge.ts";
import { discharge } from "./discharge.ts";
import { heat } from "./heat.ts";
import { moneyAndStock } from "./money-and-stock.ts";
import { phAndTheMeter } from "./ph-and-the-meter.ts";
import { solutionChemistry } from "./solution-chemistry.ts";
import { tank } from "./tank.ts";
import { thresholdAndTopUp } from "./threshold-and-top-up.ts";
import type { TourSheet } from "./tour-sheet.ts";
import { unitsAndStrength } from "./units-and-strength.ts";
import { water } from "./water.ts";
import { whatIf } from "./what-if.ts";

/** One family of functions a sheet, in the order of the day. Every name and number is invented. */
const day: readonly TourSheet[] = [
  unitsAndStrength,
  tank,
  water,
  charge,
  heat,
  phAndTheMeter,
  thresholdAndTopUp,
  whatIf,
  solutionChemistry,
  discharge,
  moneyAndStock,
];

/** The day, and by its example each function that the day has no use for. */
export const functionTour: readonly TourSheet[] = withExamples(day, catalogue);
