import { checkWithin } from "../limits/domain.ts";
import { liquidVolume, packPrice } from "../limits/domains.ts";
import type { CubicMeters, PricePerCubicMeter } from "../units/quantity.ts";
import { pricePerCubicMeter } from "../units/quantity.ts";

/**
 * Price of a volume: pack price / pack volume, in the currency of the price.
 *
 * @throws OutOfRange for a price or volume outside its domain
 */
export function unitPrice(price: number, volume: CubicMeters): PricePerCubicMeter {
  checkWithin("pack price", price, packPrice);
  checkWithin("pack volume", volume, liquidVolume);
  return pricePerCubicMeter(price / volume);
}
