import { checkWithin } from "../limits/domain.ts";
import { bufferTemperature } from "../limits/domains.ts";
import { interpolate } from "../numeric/interpolate.ts";
import { celsiusZero } from "../units/exact-constants.ts";
import type { Kelvin, PH } from "../units/quantity.ts";
import { ph } from "../units/quantity.ts";
import type { StandardBuffer } from "./standard-buffers.ts";

/**
 * pH of a standard buffer, interpolated between its certified temperatures.
 *
 * @throws OutOfRange for a temperature beyond those it was certified for
 */
export function bufferPh(buffer: StandardBuffer, temperature: Kelvin): PH {
  const last = buffer.points.at(-1)?.[0] ?? 0;
  checkWithin("temperature", temperature, { ...bufferTemperature, high: celsiusZero + last });
  return ph(interpolate(buffer.points, temperature - celsiusZero));
}
