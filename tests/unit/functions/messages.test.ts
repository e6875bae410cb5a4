import { describe, expect, it } from "vitest";

import { quantityKinds } from "../../../src/core/units/quantity.ts";
import { unitTable } from "../../../src/core/units/unit-table.ts";
import { callFormula } from "../../reference/call-formula.ts";

const volumes = unitTable
  .filter(({ kind }) => kind === "volume")
  .map(({ symbol }) => symbol)
  .join(", ");

function messageOf(formula: string): string {
  try {
    return `answered ${JSON.stringify(callFormula(formula))}`;
  } catch (refusal) {
    return refusal instanceof Error ? refusal.message : String(refusal);
  }
}

describe("a refusal", () => {
  it.each([
    ['=BATH.DOSE(0,"1+40")', "Volume is blank or 0."],
    ['=BATH.DOSE("","1+40")', "Volume is blank or 0."],
    ["=BATH.DOSE(60,)", "Rate is blank or 0."],
    ['=BATH.DOSE("1,500","1+40")', "Volume is “1,500”, which could be 1.5 or 1500; write one of these."],
    [
      '=BATH.DOSE("1,500 gal","1+40")',
      "Volume is “1,500 gal”, which could be 1.5 gal or 1500 gal; write one of these.",
    ],
    ['=BATH.DOSE("60 F","1+40")', "Volume is “60 F”: °F is a unit of temperature, not of volume."],
    ['=BATH.DOSE("60 gal","1+40",,"metric")', "Volume is “60 gal”; write “US gal” or “imperial gal”."],
    ['=BATH.DOSE(-5,"1+40")', "Volume is -5 US gal; allowed: more than 0 and at most 26417.2 US gal."],
    ['=BATH.DOSE(-5,"1+40",,"metric")', "Volume is -5 L; allowed: more than 0 and at most 100000 L."],
    ['=BATH.DOSE(60,"1+40",,"furlong")', "System is “furlong”; write “US”, “metric”, “imperial”."],
    [
      "=BATH.DOSE(60,40)",
      "Rate is 40; a bare number is the share of the finished bath and lies below 1: write 1+40, 1 in 40 or 2.5%.",
    ],
    ['=BATH.DOSE(60,"40:1")', "Rate is “40:1”, more concentrate than water; the concentrate stands first: write 1+40."],
    [
      '=BATH.DOSE(60,"3 oz wt/gal")',
      "Rate is “3 oz wt/gal”, a weight; a strength is volume in volume: write fl oz, mL or another measure of volume.",
    ],
    [
      '=BATH.DOSE(60,"25 g/L")',
      "Rate is “25 g/L”, a weight; a strength is volume in volume: write fl oz, mL or another measure of volume.",
    ],
    ['=BATH.DOSE(60,"3 oz/gal",,"metric")', "Rate is “3 oz/gal”; write US or imperial before the measure."],
    [
      '=BATH.DOSE(60,"25 mL/litter")',
      "Rate is “25 mL/litter”; did you mean “liter”? Write 1+40, 1 in 40 or 2.5%, or 3 fl oz/gal, 25 mL/L.",
    ],
    ['=BATH.DOSE(60,"1,500 mL/L")', "Rate is “1,500 mL/L”, which could be 1.5 or 1500; write one of these."],
    [
      '=BATH.DOSE("60 galons","1+40")',
      `Volume is “60 galons”; did you mean “gallons”? Write a number, or a number with one of ${volumes}.`,
    ],
    ['=BATH.DOSE("60 firkins","1+40")', `Volume is “60 firkins”; write a number, or a number with one of ${volumes}.`],
    ['=BATH.DOSE("5-10 gal","1+40")', `Volume is “5-10 gal”; write a number, or a number with one of ${volumes}.`],
    ['=BATH.DOSE("1,50,0 gal","1+40")', `Volume is “1,50,0 gal”; write a number, or a number with one of ${volumes}.`],
    [
      '=BATH.DOSE("８ oz","1+40")',
      "Volume is “８ oz”: oz is a unit of mass, not of volume. A fluid ounce is written fl oz.",
    ],
    [
      '=BATH.DOSE("－１，５００ gal","1+40")',
      "Volume is “－１，５００ gal”, which could be -1.5 gal or -1500 gal; write one of these.",
    ],
    [
      '=BATH.HARDNESSCLASS("1,500 ppm")',
      "Hardness is “1,500 ppm”, which could be 1.5 ppm or 1500 ppm; write one of these.",
    ],
    [
      "=BATH.DOSE(29,0.06944444444444445)",
      "Rate is 0.0694444, the time of day that Excel makes of 1:40; write “1+40”, or “6.94444%” if it is a share, as text.",
    ],
    ['=BATH.STRENGTHOF("3 L",120)', "Volume has no unit and dose has one; write a unit with both, or with none."],
    [
      "=BATH.STRENGTHOF(90,29)",
      "Dose is 90; allowed: more than 0 and at most 29. A bath holds no more than its own volume.",
    ],
    ["=BATH.TOPUPRANGE(1,11.3,10.8,,,,33)", "House share is 33; write a share such as 0.33, or 33%."],
    ['=BATH.TRIGGER("11.3 pH")', "Baseline is “11.3 pH”; write the number alone, without a unit."],
    ['=BATH.TRIGGER("11;3")', "Baseline is “11;3”, not a number."],
    [
      '=BATH.DOSE(60,"1+40",,"metrics")',
      "System is “metrics”; did you mean “metric”? Write “US”, “metric”, “imperial”.",
    ],
    ['=BATH.HARDNESSCLASS(61,"WAQ")', "Scheme is “WAQ”; did you mean “WQA”? Write “USGS”, “WQA”."],
    [
      '=BATH.TOPUP(4,11.3,10.8,"hidroxide")',
      "Builder is “hidroxide”; write “unknown”, “hydroxide”, “silicate”, “carbonate”, “phosphate”, or give the two columns of the SDS.",
    ],
    ['=BATH.TOPUP(4,11.3,10.8,,,,"acids")', "Loss is “acids”; did you mean “acid”? Write “acid”, “dilution”."],
    [
      '=BATH.ACIDFOR(60,600,"sulfric")',
      "Acid is “sulfric”; write “citric”, “sodium bisulfate”, “hydrochloric”, “sulfuric”, “acetic”.",
    ],
    [
      '=BATH.BUFFERPH("fosphate","25 C")',
      "Buffer is “fosphate”; write “phthalate” (4), “phosphate” (6.86), “technical 7” (7), “phosphate 7.4” (7.4), “borax” (9.18), “carbonate” (10.01), “lime” (12.45). For another buffer read the table on its bottle.",
    ],
    [
      '=BATH.UNITCONVERT(1,"galons","L")',
      "“from” is “galons”, not a known unit; did you mean “gallons”? BATH.UNITS() lists all.",
    ],
    [
      '=BATH.UNITCONVERT(3,"oz/gal","%")',
      "“from” is “oz/gal”, a unit of amount per volume, and “to” is “%”, one of strength; they do not convert. oz alone is a weight; a fluid ounce is written fl oz.",
    ],
    [
      "=BATH.UNITPRICE(100,1E-320)",
      "Pack price, Pack volume: one of these is too large or too small to calculate with.",
    ],
    [
      '=BATH.SOLUTIONPH({"NaOH",3})',
      "Composition: Total sodium is 3 mol per kg of water; allowed is 0 to 2 mol per kg of water. Strong base is NaOH, strong acid HCl.",
    ],
    [
      '=BATH.SOLUTION({"Na2CO3",1.7E308})',
      "Composition: Total sodium is too large; allowed is 0 to 2 mol per kg of water. Strong base is NaOH, strong acid HCl.",
    ],
    [
      '=BATH.UNITS("volumes")',
      `Kind is “volumes”; did you mean “volume”? Write ${quantityKinds.map((kind) => `“${kind}”`).join(", ")}.`,
    ],
    [
      '=BATH.DOSE(60,"150%")',
      "Rate is 150 %; allowed: 0.01 to 50 %. A bath is never more concentrate than water: 1+40 is 1 part of concentrate and 40 parts of water.",
    ],
    ["=BATH.TANKVOLUME(48,24,25,130)", "Displacement is 130 US gal; allowed: at least 0 and less than 124.675 US gal."],
    ["=BATH.HARDNESSCLASS(0)", "Hardness is blank or 0. If it is truly none, write “0 mg/L CaCO3”."],
    ["=BATH.TRIGGER(15)", "Baseline is 15; allowed: 0 to 14.5."],
    ['=BATH.TRIGGER(11.3,0.5,"25 C","300 F")', "Reading temperature is 300 °F; allowed: 32 to 176 °F."],
    ['=BATH.TRIGGER(11.3,0.5,"25 C","200 C")', "Reading temperature is 200 °C; allowed: 0 to 80 °C."],
    ['=BATH.TRIGGER(11.3,0.5,"25 C")', "Reading temperature is blank or 0; give both temperatures or neither."],
    [
      '=BATH.TOPUP(4,11.3,10.8,"soap")',
      "Builder is “soap”; write “unknown”, “hydroxide”, “silicate”, “carbonate”, “phosphate”, or give the two columns of the SDS.",
    ],
    ['=BATH.UNITCONVERT(-300,"C","F")', "Value is -300 °C; allowed: at least -273.15 °C."],
    ['=BATH.UNITCONVERT(-1,"parts","%")', "Value is -1; allowed: at least 0."],
    ['=BATH.UNITCONVERT(200,"%","parts")', "Value is 200 %; allowed: more than 0 and at most 100 %."],
    [
      '=BATH.UNITCONVERT(1,"gal","gpg")',
      "“from” is “gal”, a unit of volume, and “to” is “gpg”, one of hardness; they do not convert.",
    ],
    ['=BATH.UNITCONVERT(1,"smidgen","gal")', "“from” is “smidgen”, not a known unit; BATH.UNITS() lists all."],
    ['=BATH.PHAT(11.3,"25 C",)', "To temperature is blank or 0."],
    ['=BATH.PHAT(11.3,"25 C","85 C")', "To temperature is 85 °C; allowed: 0 to 80 °C."],
    ['=BATH.PHAT(15,"25 C","45 C")', "pH is 15; allowed: 0 to 14.5."],
    ["=BATH.PHATDOSE(1,15,2)", "Known pH is 15; allowed: 0 to 14.5."],
    [
      "=BATH.NEXTADD(1,10.8,10.82,11.3)",
      "The bath hardly answered: the addition moved it by 0.02 pH, and two readings of one bath can differ by 0.10. Mix and read again; check meter, temperature, mixing and water before adding more.",
    ],
    [
      '=BATH.BUFFERPH(8,"25 C")',
      "Buffer is “8”; write “phthalate” (4), “phosphate” (6.86), “technical 7” (7), “phosphate 7.4” (7.4), “borax” (9.18), “carbonate” (10.01), “lime” (12.45). For another buffer read the table on its bottle.",
    ],
    ['=BATH.BUFFERPH("carbonate","60 C")', "Temperature is 60 °C; allowed: 0 to 50 °C."],
    [
      '=BATH.ACIDFOR(60,600,"vinegar")',
      "Acid is “vinegar”; write “citric”, “sodium bisulfate”, “hydrochloric”, “sulfuric”, “acetic”.",
    ],
    ['=BATH.ACIDFOR(60,600,"hydrochloric",60)', "Purity is 60; allowed: more than 1 and at most 40."],
    ['=BATH.ACIDFOR(60,600,"hydrochloric",0.3145)', "Purity is 0.3145; allowed: more than 1 and at most 40."],
    ['=BATH.ACIDFOR(60,600,"citric",1)', "Purity is 1; allowed: more than 1 and at most 100."],
    [
      '=BATH.ACIDTO(60,11.3,7,"citric","hydroxide",,"1 meq/L")',
      "A bath at pH 11.30 holds more alkalinity than was titrated; check the titration and the reading",
    ],
    [
      '=BATH.ACIDTO(60,11,7,"citric",,,"2000 meq/L")',
      "Alkalinity is 2000 meq/L; no wash bath holds more than 500 meq/L (25021.7 mg/L), and concentrate is never neutralized. If it is mg/L as CaCO3, write “2000 mg/L”.",
    ],
    [
      "=BATH.TOPUPLEARNED(11.3,10.8,{1;1},{10.8;11},{11})",
      "Additions, befores and afters have 2, 2 and 1 cells; they must have the same number.",
    ],
    [
      "=BATH.TOPUPTITRATION(100,8,6,9)",
      "The blank is as large as the titration of the fresh bath; titrate the water alone and the bath as opened",
    ],
    ["=BATH.TRIGGERCARD(11.3,0.5,77,{70;300})", "One of the temperatures is 300 °F; allowed: 32 to 176 °F."],
    [
      '=BATH.PHAT(11.3,77,113,{"NaOH","5-10%"})',
      "Builder gives “5-10%” for “NaOH”; write one number, such as the middle of a range.",
    ],
    ["=BATH.SOLUTIONPH({1,2,3})", "Composition as a range must have two columns: component and mol per kg of water."],
    ['=BATH.SOLUTIONPH({"NaOH",-1})', "Composition holds an amount below 0 for “NaOH”."],
    ["=BATH.SHARE(100,{0;0})", "Every weight is blank or 0, so there is nothing to share by"],
  ])("of %s says “%s”", (formula, message) => {
    expect(messageOf(formula)).toBe(message);
  });
});

describe("an answer", () => {
  it.each([
    ['=BATH.DOSE("60 imperial gal",0.1)', (60 * 4.54609) / 3.785411784 / 10],
    ['=BATH.DOSE(60,"10%",,"imperial")', 6],
    ['=BATH.DOSE("1 1/2 gal","10%")', 0.15],
    ['=BATH.STRENGTH("3 fl oz/gal")', 3 / 128],
    ['=BATH.STRENGTH("3 fl oz to 1 gal")', 3 / 131],
    ['=BATH.STRENGTH("25 mL/L")', 0.025],
    ['=BATH.STRENGTH("3 oz/gal")', 3 / 128],
    ['=BATH.STRENGTH("1 + 40")', 1 / 41],
    ['=BATH.STRENGTH("１：４０")', 1 / 41],
    ['=BATH.DOSE("1,5 L","10%",,"metric")', 0.15],
    ['=BATH.DOSE("1½\u00a0gal","10%")', 0.15],
    ['=BATH.DOSE(60,"10%",,"Metric")', 6],
    ['=BATH.UNITCONVERT("−40","°F","°C")', -40],
    ['=BATH.UNITCONVERT(1,"litre","mL")', 1000],
    ['=BATH.UNITCONVERT(1,"μS/cm","µS/cm")', 1],
    ['=BATH.SOLUTIONPH({"sodium sulphate",0.01})', Number(callFormula('=BATH.SOLUTIONPH({"Na₂SO₄",0.01})'))],
    ['=BATH.ACIDFOR(60,600,"sulphuric")', Number(callFormula('=BATH.ACIDFOR(60,600,"sulfuric")'))],
    ['=BATH.ACIDFOR(60,600,"Muriatic acid")', Number(callFormula('=BATH.ACIDFOR(60,600,"hydrochloric")'))],
    ['=BATH.ACIDFOR(60,600,"sodium bisulphate")', Number(callFormula('=BATH.ACIDFOR(60,600,"sodium bisulfate")'))],
    ['=BATH.BUFFERPH("7,41","25 C")', Number(callFormula('=BATH.BUFFERPH("phosphate 7.4","25 C")'))],
    ['=BATH.STRENGTH("2,5 %")', 0.025],
    ['=BATH.HARDNESSDOSE(100,"10 gpg",2.4,"25 gpg")', 0],
    ['=BATH.HARDNESSDOSE(100,"0 mg/L",2.4)', 0],
    ['=BATH.VERDICT(10.2,11.42,0.5,"25 C","53.1 C")', "re-read at 77 °F"],
    ['=BATH.VERDICT(10.2,11.42,0.5,25,53.1,,,"metric")', "re-read at 25 °C"],
    ["=BATH.VERDICT(10.58,11.42,0.5,77,127.6)", "hold"],
  ])("to %s is %s", (formula, expected) => {
    const result = callFormula(formula);
    if (typeof expected === "number") expect(result).toBeCloseTo(expected, 10);
    else expect(result).toBe(expected);
  });

  it("of PHATDOSE far beyond the known dose names the largest dose in the unit given, and DOSEATPH finds that dose again", () => {
    const refused = messageOf('=BATH.PHATDOSE("1 L",10.8,"50 L","carbonate")');
    expect(refused).toBe(
      "New dose is 50 L; allowed: more than 0 and at most 10 L. So far from the dose that gave the known pH nothing can be said.",
    );
    const largest = 9.99;
    const reached = Number(callFormula(`=BATH.PHATDOSE(1,10.8,${String(largest)},"carbonate")`));
    expect(callFormula(`=BATH.DOSEATPH(1,10.8,${String(reached)},"carbonate")`)).toBeCloseTo(largest, 3);
  });

  it("of PHATDOSE ends where the chemistry does, if that comes first", () => {
    const refused = messageOf('=BATH.PHATDOSE("1 L",12.3,"9 L","carbonate")');
    const largest = Number(/at most ([\d.]+) L/.exec(refused)?.[1]);
    expect(largest).toBeLessThan(9);
    expect(callFormula(`=BATH.PHATDOSE(1,12.3,${String(0.999 * largest)},"carbonate")`)).toBeGreaterThan(12.3);
  });

  it("of MAKEUP takes a dose over a volume that is a time of day too: 10 in 180 is 1 in 18, and Excel's 1:20", () => {
    expect(callFormula("=BATH.MAKEUP(6,0,0,1.8,0.05555555555555555)")).toEqual([[4.2, 1.8, 0.1]]);
  });

  it("keeps the shape of the weights and leaves a header's row blank", () => {
    expect(callFormula('=BATH.SHARE(10,{"Claim";1;0;1})')).toEqual([[""], [5], [0], [5]]);
    expect(callFormula("=BATH.SHARE(10,{1,1})")).toEqual([[5, 5]]);
  });

  it("of TOPUPRANGE to the invented week's reading holds what its simulated bath took, 3.18 of 4.178 gallons", () => {
    const spill = callFormula('=BATH.TOPUPRANGE(4.178,11.42,10.83,"unknown","25 C","5 mg/L")');
    const [low, best, high, first] = (Array.isArray(spill) ? spill.flat() : []).map(Number);
    expect(low).toBeLessThan(3.18);
    expect(high).toBeGreaterThan(3.18);
    expect(best).toBeGreaterThan(2.7);
    expect(first).toBeCloseTo(4.178 / 3, 10);
  });

  it("spills a card with one row for each temperature and leaves headers out", () => {
    const spill = callFormula('=BATH.TRIGGERCARD(11.3,0.5,77,{"Temperature";77;"";113})');
    expect(Array.isArray(spill) ? spill.map(([temperature]) => temperature) : []).toEqual([77, 113]);
  });

  it("reads the builder from two columns of a safety data sheet", () => {
    const plain = callFormula('=BATH.TOPUPRANGE(3,11.3,10.8,{"Component","%";"Sodium hydroxide",12;"Water","80 %"})');
    expect(plain).toEqual(callFormula('=BATH.TOPUPRANGE(3,11.3,10.8,"hydroxide")'));
  });
});
