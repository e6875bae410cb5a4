/** Cautions that stand once in the form of the step they belong to. The label and the SDS win. */

export const alkaliCaution =
  "Alkali burns skin and eyes, often without early pain. Goggles and face shield, alkali-proof gloves, apron. In the eyes: flush 15 minutes at once, then a doctor.";

export const chargeCaution = `${alkaliCaution} Concentrate into cold water, never water into concentrate; mix, then heat.`;

export const hotSampleCaution = "A hot bath scalds: use a dipper. Hands and tools out of a running tank.";
