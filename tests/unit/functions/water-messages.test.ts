import { describe, expect, it } from "vitest";

import { unitTable } from "../../../src/core/units/unit-table.ts";
import { callFormula } from "../../reference/call-formula.ts";

const volumes = unitTable
  .filter(({ kind }) => kind === "volume")
  .map(({ symbol }) => symbol)
  .join(", ");

describe("a function of water, tank or jar test", () => {
  it.each([
    ["=BATH.ROUNDTANKVOLUME(24,20,60)", "Displacement is 60 US gal; allowed: at least 0 and less than 39.1679 US gal."],
    ["=BATH.ALKALINITY(0,0.02,100)", "Titrant is blank or 0. If it is truly none, write “0 mL”."],
    ["=BATH.ALKALINITY(-5,0.02,100)", "Titrant is -5 mL; allowed: 0 to 1000 mL."],
    ["=BATH.ALKALINITYSPLIT(,80)", "P is blank. If it is truly none, write 0."],
    ['=BATH.ALKALINITYSPLIT("6 meq/L","5 meq/L")', "P is 6 meq/L; allowed: 0 to 5 meq/L."],
    [
      "=BATH.BLEND({20;0},{4;15})",
      "Values have no number in cell 2 of its range, where there is a volume. If it is truly none, write “0 mg/L”.",
    ],
    [
      '=BATH.BLEND({20;1},{4;"n/a"})',
      `One of the volumes is “n/a”; write a number, or a number with one of ${volumes}.`,
    ],
    ["=BATH.BLEND({20;1},{4;15;3})", "Values and volumes have 2 and 3 cells; they must have the same number."],
    [
      '=BATH.BLEND({20;1},{"4 gal";15})',
      "One of the volumes is a bare number and another has a unit; write all of one kind.",
    ],
    ['=BATH.BLEND({"20 gpg";1},{4;15})', "One of the values is “20 gpg”; write plain numbers, all in one unit."],
    ['=BATH.BLEND({"0 °C";1},{4;15})', "One of the values is “0 °C”; write plain numbers, all in one unit."],
    ['=BATH.BLEND({"Values"},{"Volumes"})', "Values hold no number."],
    ["=BATH.BLENDSHARE(20,1,25)", "No blend of 20 and 1 gives 25: the target must lie between them"],
    ["=BATH.BLENDSHARE(20,0,5)", "Value b is blank or 0. If it is truly none, write “0 mg/L”."],
    ['=BATH.SOFTENERLIFE(8000,"0 gpg")', "Hardness is 0 gpg; allowed: more than 0 and at most 116.937 gpg."],
    ['=BATH.SOFTENERLIFE(-1,"18 gpg")', "Capacity is -1 grain; allowed: more than 0 and at most 10031000 grain."],
    ["=BATH.ROSPLIT(400,75,0.9)", "Recovery is 75; write a share such as 0.75, or 75%."],
    ["=BATH.ROSPLIT(400,1,0.9)", "Recovery is 1; allowed: more than 0 and less than 1."],
    ['=BATH.ROSPLIT(400,0.5,"120%")', "Rejection is 1.2; allowed: 0 to 1."],
    ["=BATH.LSI(11,77,150,34,320)", "pH is 11; allowed: 4.5 to 9.5."],
    ["=BATH.LSI(7.5,300,150,34,320)", "Temperature is 300 °F; allowed: 32 to 212 °F."],
    ["=BATH.LSI(7.5,77,150,34,5)", "TDS is 5 mg/L; allowed: 10 to 10000 mg/L."],
    [
      "=BATH.JARDOSE(82,3,2,41)",
      "Label dose is 41; a bare number is the share of the finished bath and lies below 1: write 1+40, 1 in 40 or 2.5%.",
    ],
    [
      '=BATH.JARDOSE(82,300,2,"1+40")',
      "Dose in this water over dose in reference comes to more concentrate than water; both must be amounts in one unit, for equal jars",
    ],
  ])("refuses %s with “%s”", (formula, message) => {
    expect(() => callFormula(formula)).toThrow(expect.objectContaining({ message }) as Error);
  });

  it("counts 1 mg/L of iron as 4 grains per gallon where no factor is given", () => {
    // 15 000 grains / (18 + 4 × 3) grains per gallon.
    expect(callFormula('=BATH.SOFTENERLIFE(15000,"18 gpg",3)')).toBeCloseTo(500, 9);
  });

  it.each([
    ['=BATH.ALKALINITY("0 mL",0.02,100)', 0],
    ['=BATH.BLEND({20;"0 gpg"},{4;12})', 5],
    ['=BATH.BLEND({"gpg";20;"";1},{"gal";"4 gal";"";"15 gal"})', 5],
    ['=BATH.BLENDSHARE(20,"0 mg/L",5)', 0.75],
    ['=BATH.ROSPLIT(400,"75%","95 %")', [[20, 1540, 4 / 3]]],
    ['=BATH.ROSPLIT(400,0.5,"0%")', [[400, 400, 2]]],
  ])("answers %s with %j", (formula, expected) => {
    const close = (each: number): unknown => expect.closeTo(each, 9);
    expect(callFormula(formula)).toEqual(
      Array.isArray(expected) ? expected.map((row) => row.map(close)) : close(expected),
    );
  });
});
