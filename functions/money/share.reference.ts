import type { Reference } from "../reference/reference.ts";

export const shareReference: Reference = {
  symbols: ["q_i = {T · w_i}/{Σ w}", 's_i = q_i "rounded down to the cent"'],
  where: {
    q_i: "quota",
    T: "total",
    w_i: "each weight",
    s_i: "share; cents left over go to the largest remainders, ties to the first",
  },
  source: "Largest remainder (Hamilton's method of apportionment, from memory)",
  cautions: [],
};
