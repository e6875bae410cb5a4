// Written by `npm run catalogue` in the order of help-order.ts; never edited.
/* eslint-disable import-sort/imports */
import type { Reference } from "./reference/reference.ts";
import { unitConvert, unitConvertReference } from "./units/unit-convert.ts";
import { units, unitsReference } from "./units/units.ts";
import { strength, strengthReference } from "./units/strength.ts";
import { tankVolume, tankVolumeReference } from "./tank/tank-volume.ts";
import { roundTankVolume, roundTankVolumeReference } from "./tank/round-tank-volume.ts";
import { hardness, hardnessReference } from "./water/hardness.ts";
import { hardnessClass, hardnessClassReference } from "./water/hardness-class.ts";
import { alkalinity, alkalinityReference } from "./water/alkalinity.ts";
import { alkalinitySplit, alkalinitySplitReference } from "./water/alkalinity-split.ts";
import { blend, blendReference } from "./water/blend.ts";
import { blendShare, blendShareReference } from "./water/blend-share.ts";
import { softenerLife, softenerLifeReference } from "./water/softener-life.ts";
import { roSplit, roSplitReference } from "./water/ro-split.ts";
import { lsi, lsiReference } from "./water/lsi.ts";
import { dose, doseReference } from "./charge/dose.ts";
import { strengthOf, strengthOfReference } from "./charge/strength-of.ts";
import { hardnessDose, hardnessDoseReference } from "./charge/hardness-dose.ts";
import { alkalinityDose, alkalinityDoseReference } from "./charge/alkalinity-dose.ts";
import { jarDose, jarDoseReference } from "./charge/jar-dose.ts";
import { phAtDose, phAtDoseReference } from "./charge/ph-at-dose.ts";
import { doseAtPh, doseAtPhReference } from "./charge/dose-at-ph.ts";
import { phAt, phAtReference } from "./ph/ph-at.ts";
import { bufferPh, bufferPhReference } from "./ph/buffer-ph.ts";
import { meterSlope, meterSlopeReference } from "./meter/meter-slope.ts";
import { meterFix, meterFixReference } from "./meter/meter-fix.ts";
import { driftFix, driftFixReference } from "./meter/drift-fix.ts";
import { trigger, triggerReference } from "./top-up/trigger.ts";
import { triggerCard, triggerCardReference } from "./top-up/trigger-card.ts";
import { verdict, verdictReference } from "./top-up/verdict.ts";
import { topUp, topUpReference } from "./top-up/top-up.ts";
import { topUpRange, topUpRangeReference } from "./top-up/top-up-range.ts";
import { nextAdd, nextAddReference } from "./top-up/next-add.ts";
import { recovered, recoveredReference } from "./top-up/recovered.ts";
import { topUpLearned, topUpLearnedReference } from "./top-up/top-up-learned.ts";
import { topUpTitration, topUpTitrationReference } from "./top-up/top-up-titration.ts";
import { dragOut, dragOutReference } from "./top-up/drag-out.ts";
import { makeUp, makeUpReference } from "./top-up/make-up.ts";
import { phTrend, phTrendReference } from "./top-up/ph-trend.ts";
import { timeLeft, timeLeftReference } from "./top-up/time-left.ts";
import { solutionPh, solutionPhReference } from "./solution/solution-ph.ts";
import { solution, solutionReference } from "./solution/solution.ts";
import { acidFor, acidForReference } from "./discharge/acid-for.ts";
import { acidTo, acidToReference } from "./discharge/acid-to.ts";
import { acidStages, acidStagesReference } from "./discharge/acid-stages.ts";
import { dischargeCheck, dischargeCheckReference } from "./discharge/discharge-check.ts";
import { corrosive, corrosiveReference } from "./discharge/corrosive.ts";
import { heatEnergy, heatEnergyReference } from "./heat/heat-energy.ts";
import { heatTime, heatTimeReference } from "./heat/heat-time.ts";
import { unitPrice, unitPriceReference } from "./money/unit-price.ts";
import { share, shareReference } from "./money/share.ts";
import { reorderPoint, reorderPointReference } from "./money/reorder-point.ts";
import { stockDays, stockDaysReference } from "./money/stock-days.ts";
import { doseTable, doseTableReference } from "./what-if/dose-table.ts";
import { topUpTable, topUpTableReference } from "./top-up/top-up-table.ts";

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
