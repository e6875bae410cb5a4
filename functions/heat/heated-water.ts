import { quantity } from "../arguments/quantity-argument.ts";

export const volume = quantity("volume", { kind: "volume", help: "volume of the bath, measured when cold" });

export const from = quantity("from", {
  kind: "temperature",
  help: 'temperature at the start, 0 to 100 °C; write "0 C" for 0 °C',
});

export const to = quantity("to", {
  kind: "temperature",
  help: "temperature to reach, above the first and at most 100 °C",
  ofSample: true,
});

export const heatSource =
  "density of water (Kell 1975) at the start × its enthalpy between both temperatures (steam tables after IAPWS-95): about 8.34 lb/gal and 1 Btu/lb °F";

/** Cautions and limits that stand with both figures of heat. */
export const heatNotes: readonly string[] = [
  "Water alone: the tank, the racks, evaporation and an open lid take more. A dilute bath differs from water by about as much as its concentrate.",
  "Concentrate goes into cold water and is mixed before heating. Heaters must be covered before they are switched on.",
];
