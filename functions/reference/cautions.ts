/** The cautions of all families in one place, so that whoever checks them against their sources reads them together. */
import type { Caution } from "./reference.ts";

const alkali: Caution = {
  text: "Alkali at this pH burns skin and eyes, often without early pain. Splash goggles and face shield, alkali-proof gloves, apron. In the eyes: flush 15 minutes at once, then a doctor.",
  source: "SDS sections 4 and 8; 29 CFR 1910.1200(g), 1910.132(d), 1910.151(c)",
};

const intoColdWater: Caution = {
  text: "Concentrate into cold water, slowly, never water into concentrate; mix, then heat.",
  source: "SDS section 7; common practice",
};

const intoBath: Caution = {
  text: "Concentrate into the bath slowly, with the tank not running; mix, then read.",
  source: "SDS section 7; common practice",
};

const neverMix: Caution = {
  text: "Never mix with bleach, ammonia or another cleaner: chlorine or chloramine gas.",
  source: "CDC MMWR 1991, hospital cases; California Department of Public Health, 2023",
};

const softMetals: Caution = {
  text: "No aluminum, zinc, galvanized, tin or lead pieces in the bath: alkali attacks them above about pH 8.5 to 9 and hydrogen forms.",
  source:
    "SUEZ water handbook (suezwaterhandbook.com), Aluminium: oxide stable from pH 4 to 8.5; NIOSH Pocket Guide, from memory",
};

const acidIntoBath: Caution = {
  text: "Add acid slowly to the cooled, mixing bath: it heats and foams with carbon dioxide. Never to neat concentrate; no hand or wand in the tank. Goggles, face shield, gloves: the acid's SDS wins.",
  source:
    "Purdue University, Hazard Communication Program, Corrosives: acid to water; 55.8 kJ to the equivalent by stoichiometry",
};

const noBleachWithAcid: Caution = {
  text: "Keep acid away from bleach: chlorine gas.",
  source: "CDC MMWR 1991, hospital cases",
};

const permit: Caution = {
  text: "No figure here is leave to release. Permit and local limits govern: federal floor pH 5.0, 104 °F (40 °C) at the works, no septic system or storm drain; tell the authority first where the permit says so.",
  source: "40 CFR 403.5(b)(2), (b)(5), 403.12(o)",
};

const hazardousWaste: Caution = {
  text: "Waste at pH 12.5 or more, or 2 or less, is hazardous (D002); neat concentrate that is discarded often is. Measure near 12.5 at 25 °C. Sludge and filters may be toxic for lead (5.0 mg/L, TCLP), arsenic, cadmium or chromium whatever the pH.",
  source: "40 CFR 261.22, 261.24; Method 9040C, from memory",
};

const scald: Caution = {
  text: "A hot bath scalds: at 131 °F (55 °C) a second-degree burn in 17 seconds, at 140 °F (60 °C) in 3. Keep the lid on.",
  source: "antiscald.com, Exposure Time to Receive a Severe Burn",
};

export const alkaliCautions: readonly Caution[] = [alkali];

export const chargeCautions: readonly Caution[] = [alkali, intoColdWater, neverMix, softMetals];

export const topUpCautions: readonly Caution[] = [alkali, intoBath, neverMix];

export const acidCautions: readonly Caution[] = [acidIntoBath, noBleachWithAcid, permit];

export const releaseCautions: readonly Caution[] = [permit, hazardousWaste];

export const heatCautions: readonly Caution[] = [scald];
