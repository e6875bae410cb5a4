// Written by `npm run catalogue` in the order of help-order.ts; never edited.
/* oxlint-disable import-sort/imports */
import type { Reference } from "./reference/reference.ts";
import { unitConvert } from "./units/unit-convert.ts";
import { unitConvertReference } from "./units/unit-convert.reference.ts";
import { units } from "./units/units.ts";
import { unitsReference } from "./units/units.reference.ts";
import { strength } from "./units/strength.ts";
import { strengthReference } from "./units/strength.reference.ts";
import { tankVolume } from "./tank/tank-volume.ts";
import { tankVolumeReference } from "./tank/tank-volume.reference.ts";
import { roundTankVolume } from "./tank/round-tank-volume.ts";
import { roundTankVolumeReference } from "./tank/round-tank-volume.reference.ts";
import { hardness } from "./water/hardness.ts";
import { hardnessReference } from "./water/hardness.reference.ts";
import { hardnessClass } from "./water/hardness-class.ts";
import { hardnessClassReference } from "./water/hardness-class.reference.ts";
import { alkalinity } from "./water/alkalinity.ts";
import { alkalinityReference } from "./water/alkalinity.reference.ts";
import { alkalinitySplit } from "./water/alkalinity-split.ts";
import { alkalinitySplitReference } from "./water/alkalinity-split.reference.ts";
import { blend } from "./water/blend.ts";
import { blendReference } from "./water/blend.reference.ts";
import { blendShare } from "./water/blend-share.ts";
import { blendShareReference } from "./water/blend-share.reference.ts";
import { softenerLife } from "./water/softener-life.ts";
import { softenerLifeReference } from "./water/softener-life.reference.ts";
import { roSplit } from "./water/ro-split.ts";
import { roSplitReference } from "./water/ro-split.reference.ts";
import { lsi } from "./water/lsi.ts";
import { lsiReference } from "./water/lsi.reference.ts";
import { dose } from "./charge/dose.ts";
import { doseReference } from "./charge/dose.reference.ts";
import { strengthOf } from "./charge/strength-of.ts";
import { strengthOfReference } from "./charge/strength-of.reference.ts";
import { hardnessDose } from "./charge/hardness-dose.ts";
import { hardnessDoseReference } from "./charge/hardness-dose.reference.ts";
import { alkalinityDose } from "./charge/alkalinity-dose.ts";
import { alkalinityDoseReference } from "./charge/alkalinity-dose.reference.ts";
import { jarDose } from "./charge/jar-dose.ts";
import { jarDoseReference } from "./charge/jar-dose.reference.ts";
import { phAtDose } from "./charge/ph-at-dose.ts";
import { phAtDoseReference } from "./charge/ph-at-dose.reference.ts";
import { doseAtPh } from "./charge/dose-at-ph.ts";
import { doseAtPhReference } from "./charge/dose-at-ph.reference.ts";
import { phAt } from "./ph/ph-at.ts";
import { phAtReference } from "./ph/ph-at.reference.ts";
import { bufferPh } from "./ph/buffer-ph.ts";
import { bufferPhReference } from "./ph/buffer-ph.reference.ts";
import { meterSlope } from "./meter/meter-slope.ts";
import { meterSlopeReference } from "./meter/meter-slope.reference.ts";
import { meterFix } from "./meter/meter-fix.ts";
import { meterFixReference } from "./meter/meter-fix.reference.ts";
import { driftFix } from "./meter/drift-fix.ts";
import { driftFixReference } from "./meter/drift-fix.reference.ts";
import { trigger } from "./threshold/trigger.ts";
import { triggerReference } from "./threshold/trigger.reference.ts";
import { triggerCard } from "./threshold/trigger-card.ts";
import { triggerCardReference } from "./threshold/trigger-card.reference.ts";
import { verdict } from "./threshold/verdict.ts";
import { verdictReference } from "./threshold/verdict.reference.ts";
import { topUp } from "./top-up/top-up.ts";
import { topUpReference } from "./top-up/top-up.reference.ts";
import { topUpRange } from "./top-up/top-up-range.ts";
import { topUpRangeReference } from "./top-up/top-up-range.reference.ts";
import { nextAdd } from "./top-up/next-add.ts";
import { nextAddReference } from "./top-up/next-add.reference.ts";
import { recovered } from "./top-up/recovered.ts";
import { recoveredReference } from "./top-up/recovered.reference.ts";
import { topUpLearned } from "./top-up/top-up-learned.ts";
import { topUpLearnedReference } from "./top-up/top-up-learned.reference.ts";
import { topUpTitration } from "./top-up/top-up-titration.ts";
import { topUpTitrationReference } from "./top-up/top-up-titration.reference.ts";
import { dragOut } from "./top-up/drag-out.ts";
import { dragOutReference } from "./top-up/drag-out.reference.ts";
import { makeUp } from "./top-up/make-up.ts";
import { makeUpReference } from "./top-up/make-up.reference.ts";
import { phTrend } from "./threshold/ph-trend.ts";
import { phTrendReference } from "./threshold/ph-trend.reference.ts";
import { timeLeft } from "./threshold/time-left.ts";
import { timeLeftReference } from "./threshold/time-left.reference.ts";
import { solutionPh } from "./solution/solution-ph.ts";
import { solutionPhReference } from "./solution/solution-ph.reference.ts";
import { solution } from "./solution/solution.ts";
import { solutionReference } from "./solution/solution.reference.ts";
import { acidFor } from "./discharge/acid-for.ts";
import { acidForReference } from "./discharge/acid-for.reference.ts";
import { acidTo } from "./discharge/acid-to.ts";
import { acidToReference } from "./discharge/acid-to.reference.ts";
import { acidStages } from "./discharge/acid-stages.ts";
import { acidStagesReference } from "./discharge/acid-stages.reference.ts";
import { dischargeCheck } from "./discharge/discharge-check.ts";
import { dischargeCheckReference } from "./discharge/discharge-check.reference.ts";
import { corrosive } from "./discharge/corrosive.ts";
import { corrosiveReference } from "./discharge/corrosive.reference.ts";
import { heatEnergy } from "./heat/heat-energy.ts";
import { heatEnergyReference } from "./heat/heat-energy.reference.ts";
import { heatTime } from "./heat/heat-time.ts";
import { heatTimeReference } from "./heat/heat-time.reference.ts";
import { unitPrice } from "./money/unit-price.ts";
import { unitPriceReference } from "./money/unit-price.reference.ts";
import { share } from "./money/share.ts";
import { shareReference } from "./money/share.reference.ts";
import { reorderPoint } from "./money/reorder-point.ts";
import { reorderPointReference } from "./money/reorder-point.reference.ts";
import { stockDays } from "./money/stock-days.ts";
import { stockDaysReference } from "./money/stock-days.reference.ts";
import { doseTable } from "./what-if/dose-table.ts";
import { doseTableReference } from "./what-if/dose-table.reference.ts";
import { topUpTable } from "./top-up/top-up-table.ts";
import { topUpTableReference } from "./top-up/top-up-table.reference.ts";

/** What a reader gets besides each definition, by the function's id. */
export const references: Readonly<Record<string, Reference>> = {
  [unitConvert.id]: unitConvertReference,
  [units.id]: unitsReference,
  [strength.id]: strengthReference,
  [tankVolume.id]: tankVolumeReference,
  [roundTankVolume.id]: roundTankVolumeReference,
  [hardness.id]: hardnessReference,
  [hardnessClass.id]: hardnessClassReference,
  [alkalinity.id]: alkalinityReference,
  [alkalinitySplit.id]: alkalinitySplitReference,
  [blend.id]: blendReference,
  [blendShare.id]: blendShareReference,
  [softenerLife.id]: softenerLifeReference,
  [roSplit.id]: roSplitReference,
  [lsi.id]: lsiReference,
  [dose.id]: doseReference,
  [strengthOf.id]: strengthOfReference,
  [hardnessDose.id]: hardnessDoseReference,
  [alkalinityDose.id]: alkalinityDoseReference,
  [jarDose.id]: jarDoseReference,
  [phAtDose.id]: phAtDoseReference,
  [doseAtPh.id]: doseAtPhReference,
  [phAt.id]: phAtReference,
  [bufferPh.id]: bufferPhReference,
  [meterSlope.id]: meterSlopeReference,
  [meterFix.id]: meterFixReference,
  [driftFix.id]: driftFixReference,
  [trigger.id]: triggerReference,
  [triggerCard.id]: triggerCardReference,
  [verdict.id]: verdictReference,
  [topUp.id]: topUpReference,
  [topUpRange.id]: topUpRangeReference,
  [nextAdd.id]: nextAddReference,
  [recovered.id]: recoveredReference,
  [topUpLearned.id]: topUpLearnedReference,
  [topUpTitration.id]: topUpTitrationReference,
  [dragOut.id]: dragOutReference,
  [makeUp.id]: makeUpReference,
  [phTrend.id]: phTrendReference,
  [timeLeft.id]: timeLeftReference,
  [solutionPh.id]: solutionPhReference,
  [solution.id]: solutionReference,
  [acidFor.id]: acidForReference,
  [acidTo.id]: acidToReference,
  [acidStages.id]: acidStagesReference,
  [dischargeCheck.id]: dischargeCheckReference,
  [corrosive.id]: corrosiveReference,
  [heatEnergy.id]: heatEnergyReference,
  [heatTime.id]: heatTimeReference,
  [unitPrice.id]: unitPriceReference,
  [share.id]: shareReference,
  [reorderPoint.id]: reorderPointReference,
  [stockDays.id]: stockDaysReference,
  [doseTable.id]: doseTableReference,
  [topUpTable.id]: topUpTableReference,
};
