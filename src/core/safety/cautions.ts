/**
 * Every caution that the add-in gives, once, so that whoever checks them against their sources reads them together.
 * Where each is shown stands in `caution-places.ts`. The label, the SDS and the permit win over all of them.
 */
export interface Caution {
  /** What a form shows at once; a pane is narrow. */
  readonly short: string;
  /** What sheets and the reference show, and a form when it is asked. */
  readonly text: string;
  readonly source: string;
}

/** Printed under every sheet and shown under every view. */
export const arithmeticAid = "Arithmetic aid. The label, SDS and permit win.";

export const cautions = {
  alkali: {
    short:
      "Goggles, face shield, alkali-proof gloves, apron. In eyes: flush right away, 15 minutes, then see a doctor.",
    text: "Alkali burns skin and eyes, often without early pain: splash goggles, face shield, alkali-proof gloves, apron. If it gets in eyes, flush with water right away for 15 minutes, then see a doctor.",
    source: "SDS sections 4 and 8; 29 CFR 1910.1200(g), 1910.132(d), 1910.133, 1910.138",
  },
  eyewash: {
    short: "Eyewash and shower within 10 seconds' reach.",
    text: "Eyewash and drench shower in the work area, within 10 seconds' reach, ready for 15 minutes of flow: eyewash at least 0.4 gal/min (1.5 L/min), shower 20 gal/min (76 L/min).",
    source: "29 CFR 1910.151(c); ANSI/ISEA Z358.1 as taken over by WAC 296-800-15030",
  },
  safetyFile: {
    short: "Keep the SDS within reach on every shift.",
    text: "Keep the SDS within reach on every shift, and the assessment of protective equipment in writing.",
    source: "29 CFR 1910.1200(g), 1910.132(d)",
  },
  labelStrength: {
    short: "The label's highest strength wins.",
    text: "The label's highest strength wins over any figure here.",
    source: "The product's label",
  },
  intoWater: {
    short: "Add concentrate slowly to cold water, never water to concentrate.",
    text: "Add concentrate slowly to cold water. Never add water to concentrate. Mix, then heat.",
    source: "SDS section 7; common practice",
  },
  intoBath: {
    short: "Slowly, tank not running: a hot bath splashes.",
    text: "Add concentrate slowly, with the tank not running: a hot bath splashes. Mix, then read.",
    source: "SDS section 7; common practice",
  },
  neverMix: {
    short: "Never mix with bleach, ammonia or acid cleaners.",
    text: "Never mix with bleach, ammonia or acid cleaners: chlorine or chloramine gas.",
    source: "CDC MMWR 1991, hospital cases; California Department of Public Health, 2023",
  },
  bottles: {
    short: "Label every bottle: what is in it and its hazard.",
    text: "Label every bottle with what is in it and its hazard, spray bottles too.",
    source: "29 CFR 1910.1200(f)(6); OSHA letter of June 20, 2017",
  },
  atTank: {
    short: "Goggles and alkali-proof gloves; sample with a dipper.",
    text: "Splash goggles and alkali-proof gloves at the tank; take samples with a dipper.",
    source: "SDS section 8; 29 CFR 1910.133, 1910.138",
  },
  handsOut: {
    short: "Keep hands and tools out of a running tank: use baskets, lid on, hearing protection.",
    text: "Keep hands and tools out of a running tank: use baskets, keep the lid on, wear hearing protection.",
    source: "29 CFR 1910.95; common practice, no source",
  },
  scald: {
    short: "A hot bath scalds: in 17 s at 131 °F (55 °C), 3 s at 140 °F (60 °C).",
    text: "A hot bath scalds: at 131 °F (55 °C) a second-degree burn takes 17 seconds, a third-degree one 30; at 140 °F (60 °C) 3 and 5.",
    source: "antiscald.com, Exposure Time to Receive a Severe Burn",
  },
  heatersOff: {
    short: "Heaters and ultrasound off first; never run heaters dry.",
    text: "Turn heaters and ultrasound off before draining, sludge work or acid; never run heaters dry.",
    source: "Common practice, no source; the tank's manual wins",
  },
  softMetals: {
    short: "No aluminum, zinc, galvanized, tin, lead or their alloys in alkali.",
    text: "Keep aluminum, zinc, galvanized pieces, tin, lead and their alloys out of the bath: alkali attacks them above about pH 8.5 and hydrogen forms.",
    source:
      "Pourbaix, Atlas of Electrochemical Equilibria, oxide of aluminum stable from pH 4 to 8.5; NIOSH Pocket Guide; both from memory",
  },
  soot: {
    short: "Old paint and fire dust may hold lead, asbestos, arsenic, cadmium: isolate, wipe-test, respirator.",
    text: "Paint, toys and glazes from before 1978 may hold lead; fire dust lead, asbestos, arsenic, cadmium and PAH. Isolate, wipe-test, never share a bath; respirator by assessment.",
    source:
      "16 CFR 1303 (1978); NEHA wildfire guide; California OEHHA and Cal/OSHA pages; 29 CFR 1910.1001, 1910.1025, from memory",
  },
  neverInTank: {
    short: "No batteries, aerosols, gas cylinders, paint, solvent or fuel in a tank.",
    text: "Batteries (swollen or heat-marked first of all), aerosols, gas cylinders, paint, solvent, fuel, ammunition and fireworks never go in a tank: hazardous-waste collection.",
    source: "40 CFR 262.11; 49 CFR 173.185(f), from memory",
  },
  electrode: {
    short: "Acid cleans an electrode only after the detergent is rinsed off: goggles, gloves.",
    text: "An oily electrode: detergent, rinse until no detergent is left, then hydrochloric acid 1+9 (1 part into 9 parts of water), rinse again. Goggles and gloves; the maker's manual wins.",
    source: "EPA Method 150.1, which writes the acid 1 + 9",
  },
  acidIntoBath: {
    short: "Add acid slowly to the cooled, mixing bath. Goggles, face shield, gloves, apron.",
    text: "Add acid slowly to the cooled, mixing bath, never to undiluted concentrate: heat and foam. Goggles, face shield, gloves, apron; hands and tools out of the tank.",
    source:
      "The acid's SDS; Purdue University, Hazard Communication Program, Corrosives: acid to water; 55.8 kJ per equivalent",
  },
  permit: {
    short: "Permit rules: never under pH 5.0 or over 104 °F (40 °C); no storm drain or septic.",
    text: "Nothing here is permission to discharge: permit and local limits govern. Federal floor pH 5.0, at most 104 °F (40 °C) at the treatment plant; no storm drain, no septic system; tell the authority first where the permit says so.",
    source: "40 CFR 403.5(b)(2), (b)(5), 403.12(o)",
  },
  corrosiveWaste: {
    short: "Undiluted concentrate, if thrown away, is often hazardous waste (D002).",
    text: "Waste at pH 12.5 or more, or 2 or less, is hazardous (D002). Undiluted concentrate, if thrown away, often is too. Near 12.5 measure at 25 °C with a pH 12 buffer.",
    source: "40 CFR 261.22; Method 9040C, from memory",
  },
  toxicSludge: {
    short: "Sludge and filters: a labeled, closed drum until the lab's result is in.",
    text: "Sludge and filters may be toxic waste at any pH (TCLP, from 5.0 mg/L arsenic, chromium or lead, 1.0 cadmium): a labeled, closed drum until the result is in.",
    source: "40 CFR 261.24",
  },
} as const satisfies Readonly<Record<string, Caution>>;

export type CautionId = keyof typeof cautions;
