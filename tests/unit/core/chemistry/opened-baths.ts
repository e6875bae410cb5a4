import type { BathQuestion } from "../../../../src/core/bath/model/bath-question.ts";
import { anchoredBaths } from "../../../../src/core/bath/model/bath-question.ts";
import type { Builder } from "../../../../src/core/bath/model/builder.ts";
import { waterFromTests } from "../../../../src/core/bath/model/water.ts";
import { equivalentsPerKilogram, kelvin, ph } from "../../../../src/core/units/quantity.ts";

export const celsius = (value: number) => kelvin(value + 273.15);
export const softened = waterFromTests({ alkalinity: equivalentsPerKilogram(0.003) });

/** A bath of softened water that reads 11.3 at 45 °C. */
export function bathOf(builder: Builder, more: Partial<BathQuestion> = {}): BathQuestion {
  return { baseline: ph(11.3), temperature: celsius(45), builder, water: softened, ...more };
}

export function onlyBath(question: BathQuestion) {
  const [bath] = anchoredBaths(question);
  if (bath === undefined) throw new Error("A known builder anchors one bath");
  return bath;
}
