/** Cautions that stand with every amount of acid. */
export const acidNotes: readonly string[] = [
  "Add acid slowly to the cooled, mixing bath; it heats and may foam with carbon dioxide. Never add it to neat concentrate, and never with a hand or wand in the tank. Keep it from bleach: chlorine gas. Goggles, face shield, gloves: the acid's SDS wins.",
  "A bath neutralized to 7.0 climbs back to 8 or 9 as carbon dioxide leaves: neutralize, aerate, check again. An amount is no permission to release; the permit decides.",
];
