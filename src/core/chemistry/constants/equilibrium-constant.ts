import type { Kelvin } from "../../units/quantity.ts";
import { gasConstant, referenceTemperature } from "./physical-constants.ts";
import { waterIonization } from "./water-ionization.ts";

/** A constant at 25 °C carried to other temperatures by enthalpy and a constant heat capacity. */
interface ConstantFromHeat {
  readonly type: "heat";
  readonly logKAt25: number;
  /** Of the reaction as written, kJ/mol. */
  readonly enthalpy: number;
  /** Of the reaction as written, J/(mol K). */
  readonly heatCapacity: number;
}

/** log K = constant + linear T + inverse/T + logarithm log10 T + inverseSquare/T². */
interface ConstantFromFunction {
  readonly type: "function";
  readonly constant: number;
  readonly linear: number;
  readonly inverse: number;
  readonly logarithm: number;
  readonly inverseSquare: number;
}

/** H2O = H+ + OH-. */
interface IonizationOfWater {
  readonly type: "water";
}

/** Decimal logarithm of an equilibrium constant over temperature, with where it was published. */
export type EquilibriumConstant = (ConstantFromHeat | ConstantFromFunction | IonizationOfWater) & {
  readonly source: string;
};

/** The decimal logarithm of the constant at a temperature. */
export function logKAt(equilibrium: EquilibriumConstant, temperature: Kelvin): number {
  if (equilibrium.type === "water") return -waterIonization(temperature);
  if (equilibrium.type === "function") {
    return (
      equilibrium.constant +
      equilibrium.linear * temperature +
      equilibrium.inverse / temperature +
      equilibrium.logarithm * Math.log10(temperature) +
      equilibrium.inverseSquare / (temperature * temperature)
    );
  }
  const ratio = referenceTemperature / temperature;
  const heat = (equilibrium.enthalpy * 1000 * (1 - ratio)) / referenceTemperature;
  const curvature = equilibrium.heatCapacity * (ratio - 1 - Math.log(ratio));
  return equilibrium.logKAt25 + (heat + curvature) / (gasConstant * Math.LN10);
}
