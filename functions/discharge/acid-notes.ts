/** What no amount of acid foresees; the cautions stand in functions/reference. */
export const climbsBack =
  "A bath neutralized to 7.0 climbs back to 8 or 9 as carbon dioxide leaves: neutralize, aerate, check again.";
