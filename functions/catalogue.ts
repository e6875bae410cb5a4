// Written by `npm run catalogue` in the order of help-order.ts; never edited.
/* oxlint-disable import-sort/imports */
import type { WorksheetFunction } from "./define-function.ts";
import { unitConvert } from "./units/unit-convert.ts";
import { units } from "./units/units.ts";
import { strength } from "./units/strength.ts";
import { tankVolume } from "./tank/tank-volume.ts";
import { roundTankVolume } from "./tank/round-tank-volume.ts";
import { hardness } from "./water/hardness.ts";
import { hardnessClass } from "./water/hardness-class.ts";
import { alkalinity } from "./water/alkalinity.ts";
import { alkalinitySplit } from "./water/alkalinity-split.ts";
import { blend } from "./water/blend.ts";
import { blendShare } from "./water/blend-share.ts";
import { softenerLife } from "./water/softener-life.ts";
import { roSplit } from "./water/ro-split.ts";
import { lsi } from "./water/lsi.ts";
import { dose } from "./charge/dose.ts";
import { strengthOf } from "./charge/strength-of.ts";
import { hardnessDose } from "./charge/hardness-dose.ts";
import { alkalinityDose } from "./charge/alkalinity-dose.ts";
import { jarDose } from "./charge/jar-dose.ts";
import { phAtDose } from "./charge/ph-at-dose.ts";
import { doseAtPh } from "./charge/dose-at-ph.ts";
import { phAt } from "./ph/ph-at.ts";
import { bufferPh } from "./ph/buffer-ph.ts";
import { meterSlope } from "./meter/meter-slope.ts";
import { meterFix } from "./meter/meter-fix.ts";
import { driftFix } from "./meter/drift-fix.ts";
import { trigger } from "./threshold/trigger.ts";
import { triggerCard } from "./threshold/trigger-card.ts";
import { verdict } from "./threshold/verdict.ts";
import { topUp } from "./top-up/top-up.ts";
import { topUpRange } from "./top-up/top-up-range.ts";
import { nextAdd } from "./top-up/next-add.ts";
import { recovered } from "./top-up/recovered.ts";
import { topUpLearned } from "./top-up/top-up-learned.ts";
import { topUpTitration } from "./top-up/top-up-titration.ts";
import { dragOut } from "./top-up/drag-out.ts";
import { makeUp } from "./top-up/make-up.ts";
import { phTrend } from "./threshold/ph-trend.ts";
import { timeLeft } from "./threshold/time-left.ts";
import { solutionPh } from "./solution/solution-ph.ts";
import { solution } from "./solution/solution.ts";
import { acidFor } from "./discharge/acid-for.ts";
import { acidTo } from "./discharge/acid-to.ts";
import { acidStages } from "./discharge/acid-stages.ts";
import { dischargeCheck } from "./discharge/discharge-check.ts";
import { corrosive } from "./discharge/corrosive.ts";
import { heatEnergy } from "./heat/heat-energy.ts";
import { heatTime } from "./heat/heat-time.ts";
import { unitPrice } from "./money/unit-price.ts";
import { share } from "./money/share.ts";
import { reorderPoint } from "./money/reorder-point.ts";
import { stockDays } from "./money/stock-days.ts";
import { doseTable } from "./what-if/dose-table.ts";
import { topUpTable } from "./top-up/top-up-table.ts";

/** Every worksheet function, in the order of the help. */
export const catalogue: readonly WorksheetFunction[] = [
  unitConvert,
  units,
  strength,
  tankVolume,
  roundTankVolume,
  hardness,
  hardnessClass,
  alkalinity,
  alkalinitySplit,
  blend,
  blendShare,
  softenerLife,
  roSplit,
  lsi,
  dose,
  strengthOf,
  hardnessDose,
  alkalinityDose,
  jarDose,
  phAtDose,
  doseAtPh,
  phAt,
  bufferPh,
  meterSlope,
  meterFix,
  driftFix,
  trigger,
  triggerCard,
  verdict,
  topUp,
  topUpRange,
  nextAdd,
  recovered,
  topUpLearned,
  topUpTitration,
  dragOut,
  makeUp,
  phTrend,
  timeLeft,
  solutionPh,
  solution,
  acidFor,
  acidTo,
  acidStages,
  dischargeCheck,
  corrosive,
  heatEnergy,
  heatTime,
  unitPrice,
  share,
  reorderPoint,
  stockDays,
  doseTable,
  topUpTable,
];
