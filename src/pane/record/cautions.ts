/** Cautions that stand once in the form of the step they belong to. The label and the SDS win. */

export const alkaliCaution =
  "Alkali burns skin and eyes, often without early pain. Goggles and face shield, alkali-proof gloves, apron. In the eyes: flush 15 minutes at once, then a doctor.";

export const chargeCaution = `${alkaliCaution} Concentrate into cold water, never water into concentrate; mix, then heat.`;

export const hotSampleCaution = "A hot bath scalds: use a dipper. Hands and tools out of a running tank.";

export const loadCaution =
  "Hands and tools out of a running bath: use baskets, lid on, hearing protection. A hot bath scalds within seconds.";

export const itemsCaution =
  "No aluminum, zinc, galvanized, tin, lead or their alloys in the bath: hydrogen forms. Old paint and fire dust may hold lead or asbestos: isolate, wipe-test. No batteries, aerosols, paint or fuel in a tank.";

export const careCaution =
  "Hands out of a running tank; goggles and alkali-proof gloves. Sludge and filters may be toxic for lead: a labeled, closed drum until the result is in.";

export const changeOutCaution =
  "A closed bath is not yet released: let it cool, and neutralize it before it goes anywhere. Permit and local limits govern.";

export const releaseCaution =
  "Acid slowly into the cooled, mixing bath, never into neat concentrate: heat and foam. Goggles, face shield, gloves; no hand or wand in the tank. Permit and local limits govern: never a storm drain or a septic tank.";
