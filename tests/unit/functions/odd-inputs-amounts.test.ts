import { describe, expect, it } from "vitest";

import { callFormula } from "../../reference/call-formula.ts";

/** What a cell shows, or the sentence that it gets instead. */
function shown(formula: string): unknown {
  try {
    return callFormula(formula);
  } catch (refusal) {
    return refusal instanceof Error ? refusal.message : refusal;
  }
}

const d002 = "At 12.5 and more it is hazardous waste, D002 (40 CFR 261.22), and within 0.1 of that no meter decides.";
const noMoreThan =
  "No amount is worked out for more: a bath that is poured away at 12.5 is hazardous waste, D002 (40 CFR 261.22), and within 0.1 of that no meter decides.";
const floor =
  "Federal law lets nothing below pH 5.0 into a sewer, except to a treatment plant designed for it (40 CFR 403.5(b)(2)).";
const aimAtSix =
  "Federal law lets nothing below pH 5.0 into a sewer (40 CFR 403.5(b)(2)), and so near it a little acid moves the pH far: aim at 6 or higher.";
const coolBeforeAcid =
  "Let it cool and read again: acid makes a hot bath foam and spit, and a hot bath reads lower than a cool one.";
const neverNeutralized = "no wash bath holds more than 500 meq/L (25021.7 mg/L), and concentrate is never neutralized.";
const askFirst =
  "At 12.5 a spent bath is hazardous waste, D002, before any acid (40 CFR 261.22), and within 0.1 of that no meter decides: ask the authority before it is treated.";
const whichAcetic =
  "Purity is blank or 0; acetic acid is sold from 5 % (vinegar) to 100 % (glacial, which burns and is flammable), so write the percent by weight on its label.";
const newBath = (times: string): string =>
  `The top-up comes to ${times} times the opening dose, more than the bath was opened with: check reading, meter, temperature and water; if they are right, change the bath.`;
const hardlyAnswered = (rise: string): string =>
  `The bath hardly answered: the addition moved it by ${rise} pH, and two readings of one bath can differ by 0.10. Mix and read again; check meter, temperature, mixing and water before adding more.`;
const notRaised =
  "The additions so far did not raise the pH, or by no more than two readings of one bath can differ, 0.10. Mix and read again; check meter, temperature, mixing and water before adding more.";
const overfull = (percent: string): string =>
  `With it, all that was poured in comes to ${percent} % of the bath's volume. ${moreThanWater} Check both amounts and their units.`;
const moreThanWater =
  "A bath is never more concentrate than water: 1+40 is 1 part of concentrate and 40 parts of water.";

describe("acid from an odd alkalinity, target, temperature or product", () => {
  it.each([
    // 121 gal of 0.084 eq/L is 38.47 eq; at 64.04 g 5.43 lb, not the 271.8 lb of 4203.65 meq/L.
    ['=BATH.ACIDFOR(121,4203.65,"citric")', 5.43],
    ['=BATH.ACIDFOR(121,"84 meq/L","citric")', 5.43],
    ['=BATH.ACIDFOR(121,320,"hydrochloric")', 0.078],
    ['=BATH.ACIDFOR(121,"320 mg/L","hydrochloric")', 0.078],
    ['=BATH.ACIDTO(121,11.3,8.5,"citric",,,240)', 0.229],
    ['=BATH.ACIDTO(121,11.3,8.5,"citric",,,"240 mg/L")', 0.229],
    ['=BATH.ACIDFOR(121,320,"acetic","5%")', 0.924],
    ['=BATH.ACIDTO(121,8.2,8.5,"citric")', 0],
  ])("%s is %s", (formula, expected) => {
    expect(Math.abs(Number(shown(formula)) - expected)).toBeLessThanOrEqual(0.005);
  });

  it.each([
    [
      '=BATH.ACIDFOR(121,120,"citric")',
      "Alkalinity is 120; a number alone is mg/L as CaCO3, and an alkaline bath holds more. If it is meq/L, write “120 meq/L” (6005.21 mg/L); if it is truly mg/L, write “120 mg/L”.",
    ],
    [
      '=BATH.ACIDFOR(121,6.4,"citric")',
      "Alkalinity is 6.4, without a unit; write “6.4 meq/L” (320 mg/L) or “6.4 mg/L”.",
    ],
    [
      '=BATH.ACIDTO(121,11.3,8.5,"citric",,,"13.65")',
      "Alkalinity is 13.65, without a unit; write “13.65 meq/L” (683 mg/L) or “13.65 mg/L”.",
    ],
    [
      '=BATH.ACIDFOR(121,"4203.65 meq/L","citric")',
      `Alkalinity is 4203.65 meq/L; ${neverNeutralized} If it is mg/L as CaCO3, write “4203.65 mg/L”.`,
    ],
    ['=BATH.ACIDFOR(121,30000,"citric")', `Alkalinity is 30000 mg/L CaCO3; ${neverNeutralized}`],
    [
      '=BATH.ACIDTO(121,11.3,8.5,"citric",,,"1 eq/L")',
      `Alkalinity is 1 eq/L; ${neverNeutralized} If it is meq/L, write “1 meq/L”.`,
    ],
    [
      '=BATH.ACIDFOR(121,-320,"citric")',
      "Alkalinity is -320 mg/L CaCO3; allowed: more than 0 and at most 25021.7 mg/L CaCO3.",
    ],
    ['=BATH.ACIDFOR(121,,"citric")', "Alkalinity is blank or 0."],
    ['=BATH.ACIDTO(121,11.3,1,"hydrochloric")', `Target pH is 1; allowed: 6 to 14.5. ${aimAtSix}`],
    ['=BATH.ACIDTO(121,11.3,0.5,"sulfuric")', `Target pH is 0.5; allowed: 6 to 14.5. ${aimAtSix}`],
    ['=BATH.ACIDTO(121,11.3,5.5,"citric")', `Target pH is 5.5; allowed: 6 to 14.5. ${aimAtSix}`],
    ['=BATH.ACIDTO(121,11.3,8.5,"citric",,140)', `Temperature is 140 °F; allowed: 32 to 104 °F. ${coolBeforeAcid}`],
    ['=BATH.ACIDTO(121,11.3,8.5,"citric",,"80 C")', `Temperature is 80 °C; allowed: 0 to 40 °C. ${coolBeforeAcid}`],
    ['=BATH.ACIDTO(121,13.5,8.5,"citric")', `pH is 13.5; allowed: 0 to 12.4. ${askFirst}`],
    ['=BATH.ACIDTO(121,12.45,8.5,"citric")', `pH is 12.45; allowed: 0 to 12.4. ${askFirst}`],
    ['=BATH.ACIDFOR(121,320,"acetic")', whichAcetic],
    ['=BATH.ACIDTO(121,11.3,8.5,"acetic")', whichAcetic],
    [
      '=BATH.ACIDFOR(121,20000,"acetic",2)',
      "Purity is 2 %, so thin that the acid comes to 1.2 times the bath. Take a stronger product, or check the purity and the titration.",
    ],
  ])("%s says “%s”", (formula, sentence) => {
    expect(shown(formula)).toBe(sentence);
  });
});

describe("a release with odd limits", () => {
  it.each([
    ["=BATH.DISCHARGECHECK(4.5,4,9)", `Low is 4; allowed: 5 to 12.4. ${floor}`],
    ["=BATH.DISCHARGECHECK(4.99,4.5,9)", `Low is 4.5; allowed: 5 to 12.4. ${floor}`],
    ["=BATH.DISCHARGECHECK(2,1,14)", `Low is 1; allowed: 5 to 12.4. ${floor}`],
    ["=BATH.DISCHARGECHECK(13,6,14)", `High is 14; allowed: 5 to 12.4. ${d002}`],
    ["=BATH.DISCHARGECHECK(12.6,6,13)", `High is 13; allowed: 5 to 12.4. ${d002}`],
    ["=BATH.DISCHARGECHECK(12.45,6,12.45)", `High is 12.45; allowed: 5 to 12.4. ${d002}`],
    [
      "=BATH.DISCHARGECHECK(8,6,9,131)",
      "Temperature is 131 °F; allowed: 32 to 104 °F. Let it cool and read again: a hot alkaline bath reads lower than a cool one.",
    ],
    ["=BATH.DISCHARGECHECK(4.99,5,9)", "below"],
    ["=BATH.DISCHARGECHECK(12.5,5,12.4)", "above"],
    ["=BATH.CORROSIVE(12.4999)", true],
    ["=BATH.CORROSIVE(2.05)", true],
    ["=BATH.CORROSIVE(12.4)", false],
    ["=BATH.CORROSIVE(12.4,0.2)", true],
  ])("%s shows %s", (formula, expected) => {
    expect(shown(formula)).toBe(expected);
  });
});

describe("a top-up from noise, or past the opening dose", () => {
  it.each([
    ["=BATH.NEXTADD(1,10.8,10.83,11.3)", hardlyAnswered("0.03")],
    ["=BATH.NEXTADD(1,10.8,10.84,11.3)", hardlyAnswered("0.04")],
    ["=BATH.NEXTADD(1,10.8,10.9,11.3)", hardlyAnswered("0.10")],
    ["=BATH.NEXTADD(1,10.8,10.7,11.3)", hardlyAnswered("-0.10")],
    ["=BATH.NEXTADD(100,10.8,10.83,13)", `Baseline is 13; allowed: 0 to 12.4. ${noMoreThan}`],
    ["=BATH.NEXTADD(1,10.8,10.95,11.3)", 1],
    ["=BATH.NEXTADD(1,10.8,10.95,11.3,,,,,4.5)", 1.5],
    ['=BATH.NEXTADD(1,10.8,10.95,11.3,,,,,4,"25%")', 1],
    [
      "=BATH.NEXTADD(1,10.8,10.95,11.3,,,,,4,,0.1)",
      "The bath hardly answered: the addition moved it by 0.15 pH, and two readings of one bath can differ by 0.20. Mix and read again; check meter, temperature, mixing and water before adding more.",
    ],
    ["=BATH.NEXTADD(1,10.8,10.95,11.3,,,,,,,2)", "Meter accuracy is 2; allowed: more than 0 and at most 0.5."],
    ["=BATH.TOPUPLEARNED(11.3,10.8,{1},{10.8},{10.81})", notRaised],
    ["=BATH.TOPUPLEARNED(11.3,10.8,{1;1},{10.8;11},{10.9;10.9})", notRaised],
    // The addition within the noise says nothing; the other answers alone.
    ["=BATH.TOPUPLEARNED(11.3,11,{1;1},{10.8;10.8},{10.81;11.3})", 0.7294],
    [
      "=BATH.TOPUPLEARNED(12.4,8,{1},{10.8},{11})",
      "This comes to more than 10 times the largest addition so far, and so far from what was measured nothing can be said. Add as much as last time, mix and read again.",
    ],
    // (10^11.42 − 10^10.83) / (10^11.13 − 10^10.83) is 2.90 of 1.39, over 2.
    ["=BATH.TOPUPLEARNED(11.42,10.83,{1.39},{10.83},{11.13},2)", newBath("2.02")],
    ["=BATH.TOPUPLEARNED(11.42,10.83,{1.39},{10.83},{11.13},1E-320)", newBath("more than 1000")],
    ["=BATH.TOPUPLEARNED(12.5,11,{1},{10.8},{11.3})", `Baseline is 12.5; allowed: 0 to 12.4. ${noMoreThan}`],
    ["=BATH.TOPUPRANGE(4.178,11.42,9)", newBath("1.17")],
    ["=BATH.TOPUP(4.178,11.42,4)", newBath("1.71")],
    ["=BATH.TOPUP(1,12.5,12)", `Baseline is 12.5; allowed: 0 to 12.4. ${noMoreThan}`],
  ])("%s shows %s", (formula, expected) => {
    const answer = shown(formula);
    if (typeof expected === "number") expect(answer).toBeCloseTo(expected, 3);
    else expect(answer).toBe(expected);
  });

  it("stands as words in the table, beside the readings that have an amount", () => {
    const rows = shown("=BATH.TOPUPTABLE(4.178,11.42,{11;4})");
    const [near, far] = Array.isArray(rows) ? (rows as unknown[][]) : [];
    expect(near?.every((cell) => typeof cell === "number" && cell <= 11)).toBe(true);
    expect(far).toEqual([4, "over the opening dose", "over the opening dose", "over the opening dose"]);
  });

  it("has a range as wide as the meter is bad, and never more than the opening dose", () => {
    const rangeOf = (accuracy: string): readonly number[] =>
      (callFormula(`=BATH.TOPUPRANGE(1,11.42,10.92,"silicate",,"5 mg/L",,${accuracy})`) as number[][]).flat();
    const [fine, usual, coarse] = ["0.001", "", "0.2"].map(rangeOf);
    for (const [narrow, wide] of [
      [fine, usual],
      [usual, coarse],
    ]) {
      expect(wide?.[0]).toBeLessThan(narrow?.[0] ?? 0);
      expect(wide?.[1]).toBe(narrow?.[1]);
      expect(wide?.[2]).toBeGreaterThan(narrow?.[2] ?? 1);
    }
    expect(coarse?.[2]).toBeLessThanOrEqual(1);
  });
});

describe("a dose of more than fits the tank", () => {
  it.each([
    [
      "=BATH.HARDNESSDOSE(121,308,0.0024)",
      "Capacity is 0.0024 mg/mL, so the extra concentrate comes to 128 times the volume, and a bath is never more concentrate than water. If the data sheet says grams per mL, it is 2.4 mg/mL.",
    ],
    ["=BATH.HARDNESSDOSE(121,308,2.4)", 15.528],
    [
      "=BATH.HARDNESSDOSE(121,308,1E-9)",
      "Capacity is 1e-9 mg/mL, so the extra concentrate comes to more than 1000 times the volume, and a bath is never more concentrate than water. If the data sheet says grams per mL, it is 0.000001 mg/mL.",
    ],
    [
      "=BATH.ALKALINITYDOSE(121,240,0.0001)",
      "Strength is 0.0001 eq/L, so the extra concentrate comes to 48 times the volume, and a bath is never more concentrate than water. If the data sheet says equivalents per mL, it is 0.1 eq/L.",
    ],
    ["=BATH.ALKALINITYDOSE(121,240,0.55)", 1.0551],
    [
      '=BATH.HARDNESSDOSE(121,"308 gpg",55)',
      "Hardness is 308 gpg; allowed: 0 to 116.937 gpg. No tap or well water is as hard: is the figure in another unit?",
    ],
    [
      "=BATH.ALKALINITY(8.4,0.1,0.01)",
      "This comes to 84 eq/L, and the strongest lye holds about 20. Check that the titrant and the sample are in mL and the normality in eq/L.",
    ],
    [
      "=BATH.DOSEATPH(4.178,11.42,7)",
      "pH 7.00 calls for less than a hundredth of the known dose, and so thin a bath is little more than its water: check the pH and the dose.",
    ],
    ["=BATH.DOSEATPH(4.178,11.42,10)", 0.1301],
    ["=BATH.TOPUP(121,11.42,10.83,,,,,,121)", overfull("181")],
    ["=BATH.TOPUPRANGE(1000,11.42,10.83,,,,,,121)", overfull("1500")],
    ["=BATH.NEXTADD(1.39,10.83,11.2,11.42,,,,,121,,,121)", overfull("103")],
    ["=BATH.TOPUPTITRATION(192,8,6,,121)", overfull("198")],
    ["=BATH.TOPUPTITRATION(4.178,8,6,,-121)", "Volume must be more than 0."],
    ["=BATH.TOPUP(4.178,11.42,10.83,,,,,,121)", 3.3907],
    ["=BATH.ACIDSTAGES(1000000)", "Amount is 1000000; allowed: more than 0 and at most 10000."],
    [
      '=BATH.JARDOSE(82,110,10,"1+40")',
      "Dose in this water is 11 times dose in reference, and no water makes so much of a difference. Check both doses: amounts in one unit, for equal jars.",
    ],
    [
      '=BATH.JARDOSE(82,0.1,10,"1+40")',
      "Dose in this water is 0.01 times dose in reference, and no water makes so much of a difference. Check both doses: amounts in one unit, for equal jars.",
    ],
    ["=BATH.DOSEATPH(1,11.3,12.5)", `Target pH is 12.5; allowed: 0 to 12.4. ${noMoreThan}`],
    [
      "=BATH.DOSEATPH(1,11.3,12.4)",
      "pH 12.40 calls for 20 times the known dose. More than 10 times what was measured is no estimate: check the pH and the dose.",
    ],
    [
      "=BATH.PHATDOSE(1,11.3,200)",
      "New dose is 200 US gal; allowed: more than 0 and at most 10 US gal. So far from the dose that gave the known pH nothing can be said.",
    ],
    ["=BATH.MAKEUP(6,10,0.18,1,0.9)", "Rate is 0.9, which as a share is 90 %; write “0.9%” or “90%”, as text."],
    ['=BATH.MAKEUP(6,10,0.18,1,"90%")', `Rate is 90 %; allowed: 0.01 to 50 %. ${moreThanWater}`],
    ["=BATH.DOSE(121175,0.03)", "Volume is 121175 US gal; allowed: more than 0 and at most 26417.2 US gal."],
    ["=BATH.DOSE(121,0.9)", "Rate is 0.9, which as a share is 90 %; write “0.9%” or “90%”, as text."],
    ['=BATH.DOSE(121,"90%")', `Rate is 90 %; allowed: 0.01 to 50 %. ${moreThanWater}`],
    ['=BATH.DOSE(121,"1+1")', 60.5],
    ['=BATH.DOSETABLE({121},{"80%"})', `Rate is 80 %; allowed: 0.01 to 50 %. ${moreThanWater}`],
    [
      '=BATH.JARDOSE(82,60,2,"1+40")',
      "Dose in this water over dose in reference comes to more concentrate than water; both must be amounts in one unit, for equal jars",
    ],
    [
      "=BATH.STRENGTHOF(90,29)",
      "Dose is 90; allowed: more than 0 and at most 29. A bath holds no more than its own volume.",
    ],
  ])("%s shows %s", (formula, expected) => {
    const answer = shown(formula);
    if (typeof expected === "number") expect(answer).toBeCloseTo(expected, 3);
    else expect(answer).toBe(expected);
  });
});

it("the result of ALKALINITY goes straight into ACIDFOR and ACIDTO", () => {
  const titrated = String(callFormula("=BATH.ALKALINITY(8.4,0.1,10)"));
  expect(callFormula(`=BATH.ACIDFOR(121,${titrated},"citric")`)).toBeCloseTo(5.43, 2);
  const total = String(callFormula("=BATH.ALKALINITY(27.3,0.05,100)"));
  expect(callFormula(`=BATH.ACIDTO(121,11.3,8.5,"citric",,,${total})`)).toBeCloseTo(
    Number(callFormula('=BATH.ACIDTO(121,11.3,8.5,"citric",,,"13.65 meq/L")')),
    9,
  );
});
