import type { Reference } from "../reference/reference.ts";

export const tankVolumeReference: Reference = {
  symbols: ["V = L · W · d − V_d"],
  where: { V: "volume of liquid", L: "length", W: "width", d: "depth", V_d: "displacement" },
  source: "Geometry; 231 cubic inches to the US gallon by definition",
  cautions: [],
};
