/** What no amount of acid foresees; the cautions stand in functions/reference. */
export const climbsBack =
  "A bath neutralized to 7.0 climbs back to 8 or 9 as carbon dioxide leaves: neutralize, aerate, check again.";

/** 55.8 kJ per equivalent over 4.18 kJ to the liter and degree; for a concentrate of 1 to 3 eq/L. */
export const neutralizingHeats =
  "Neutralizing gives off 55.8 kJ per equivalent: a bath of 0.1 eq/L warms by 1.3 °C (2.4 °F), a concentrate of 1 to 3 eq/L by 13 to 40 °C (24 to 72 °F), faster than it mixes, and it spits. Strong sulfuric acid gives off up to 40 kJ per equivalent more by being diluted (from memory). Never neutralize concentrate.";
