import { waterDensity } from "../chemistry/constants/water-density.ts";
import { checkWithin } from "../limits/domain.ts";
import { bathTemperature, readablePh, waterAlkalinity } from "../limits/domains.ts";
import { celsiusZero } from "../units/exact-constants.ts";
import type { Alkalinity, EquivalentsPerKilogram, Kelvin, PH } from "../units/quantity.ts";
import { equivalentsPerKilogram, kelvin } from "../units/quantity.ts";
import type { BathQuestion } from "./model/bath-question.ts";
import type { Builder } from "./model/builder.ts";
import type { Water } from "./model/water.ts";
import { waterFromTests } from "./model/water.ts";

/** What is known about the chemistry of a bath. */
export interface BathChemistry {
  readonly builder: Builder;
  /** Alkalinity of the water; absent where it was not tested. */
  readonly alkalinity: Alkalinity | undefined;
}

/** A bath that gave its baseline, at `temperature`, when it was opened. */
export interface Bath extends BathChemistry {
  readonly baseline: PH;
  readonly temperature: Kelvin;
}

/** Alkalinity is titrated at room temperature. */
const roomDensity = waterDensity(kelvin(celsiusZero + 25)) * 1000; // kg/m3

function perKilogram(alkalinity: number): EquivalentsPerKilogram {
  return equivalentsPerKilogram(alkalinity / roomDensity);
}

const pureWater = waterFromTests({ alkalinity: equivalentsPerKilogram(0) }).likely;

/** About 200 mg/L as calcium carbonate: as alkaline as most supplies get. */
const alkalineWater = waterFromTests({ alkalinity: perKilogram(4) });

/** Water that was not tested may be pure, or alkaline and hard. */
const untestedWater: Water = { likely: pureWater, otherwise: alkalineWater.otherwise };

function waterOf(alkalinity: Alkalinity | undefined): Water {
  return alkalinity === undefined ? untestedWater : waterFromTests({ alkalinity: perKilogram(alkalinity) });
}

/**
 * The bath as the chemistry asks for it; water that was not tested is taken as pure, and may be a hard one
 * with an alkalinity of 200 mg/L.
 *
 * @throws OutOfRange for a value outside its domain
 */
export function questionOf({ baseline, temperature, builder, alkalinity }: Bath): BathQuestion {
  checkWithin("baseline", baseline, readablePh);
  checkWithin("temperature", temperature, bathTemperature);
  if (alkalinity !== undefined) checkWithin("alkalinity", alkalinity, waterAlkalinity);
  return { baseline, temperature, builder, water: waterOf(alkalinity) };
}

/** The same bath in softened water of 200 mg/L, where its water was not tested. */
export function softenedQuestionOf(bath: Bath): BathQuestion | undefined {
  return bath.alkalinity === undefined ? { ...questionOf(bath), water: { likely: alkalineWater.likely } } : undefined;
}
