import type { Reference } from "../reference/reference.ts";

export const unitConvertReference: Reference = {
  symbols: ["y = {(x + o_1) · f_1}/{f_2} − o_2"],
  where: {
    y: "converted number",
    x: "value",
    f_1: "SI factor of the unit in from",
    f_2: "SI factor of the unit in to",
    "o_1, o_2": "zero points of temperature scales; 0 for all other units",
  },
  source:
    "Exact definitions: inch 25.4 mm, pound 0.45359237 kg, grain 64.79891 mg, US gallon 231 in³, imperial gallon 4.54609 L",
  cautions: [],
};
