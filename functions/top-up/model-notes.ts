/** What every function says that asks the chemistry of a bath; one wording for all of them. */
export const modelNotes: readonly string[] = [
  "A builder's word stands for a typical product of its kind, “unknown” for the middle of all four, and ranges span all four. The list from the SDS is better than a word. Surfactants, amine soaps and the scale of silicate or phosphate are left out.",
  "Water whose alkalinity is not given counts as pure, and ranges allow for anything up to 200 mg/L; a true zero is written “0 mg/L”.",
  "In US units a bare temperature under 60 is asked about where the call does not name its system: 53 °F is cold for a sample, and 53 °C a common bath.",
];

/** What bounds every top-up from a reading. */
export const topUpBounds =
  "Refuses (#N/A) what comes to more than the opening dose: check reading, meter and water, or change the bath. Refuses a baseline within 0.1 of 12.5, where a bath that is poured away is hazardous waste (D002).";
