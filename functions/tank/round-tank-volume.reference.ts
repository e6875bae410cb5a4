import type { Reference } from "../reference/reference.ts";

export const roundTankVolumeReference: Reference = {
  symbols: ["V = {π}/{4} · D^2 · d − V_d"],
  where: { V: "volume of liquid", D: "inside diameter", d: "depth", V_d: "displacement" },
  source: "Geometry; 231 cubic inches to the US gallon by definition",
  cautions: [],
};
