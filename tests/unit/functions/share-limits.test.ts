import { describe, expect, it } from "vitest";

import { fraction } from "../../../functions/arguments/fraction-argument.ts";
import { linesOfTable, list, numberOf } from "../../../functions/arguments/list-arguments.ts";
import { quantityList } from "../../../functions/arguments/quantity-argument.ts";
import { reachedStrength, strengthArgument } from "../../../functions/arguments/strength-argument.ts";
import { temperatureOf } from "../../../functions/arguments/temperature-argument.ts";
import { weights } from "../../../functions/arguments/weights-argument.ts";
import type { CallContext } from "../../../functions/define-function.ts";

const call: CallContext = { system: "US", systemNamed: false, given: new Map(), bare: new Map() };

describe("a share of a whole", () => {
  const share = fraction("share", "a share");

  it.each([2, 100])("asks whether %f is meant as percent, at either end of what percent can be", (typed) => {
    expect(() => share.read(typed, call)).toThrow(`${String(typed)}%`);
  });

  it.each([1.999, 100.1])("leaves %f to the limits of the calculation", (typed) => {
    expect(share.read(typed, call)).toBe(typed);
  });
});

describe("a strength typed as a ratio that Excel took for a time of day", () => {
  const rate = strengthArgument("rate", "a strength");
  const timeOf = (parts: number): number => (60 + parts) / 1440;

  it.each([1, 101, 200])("is refused as 1:%i, also where labels are thin", (parts) => {
    expect(() => rate.read(timeOf(parts), call)).toThrow(`write “1+${String(parts)}”`);
  });

  it("is no ratio beyond the thinnest that labels ask for, but as a share it is a percentage or a slip for one", () => {
    expect(() => rate.read(timeOf(201), call)).toThrow("write “0.18125%” or “18.125%”, as text");
  });

  it("is a share in three cases of two hundred: 5, 7.5 and 10 %, which people type", () => {
    const all = Array.from({ length: 200 }, (_, index) => index + 1);
    const read = all.filter((parts) => {
      try {
        return rate.read(timeOf(parts), call) === timeOf(parts);
      } catch {
        return false;
      }
    });
    expect(read).toEqual([12, 48, 84]);
    expect(read.map(timeOf)).toEqual([0.05, 0.075, 0.1]);
  });

  it("is refused where it has three digits, as 1:30 has: 6.25 % is written with its sign", () => {
    expect(() => rate.read(timeOf(30), call)).toThrow("write “1+30”, or “6.25%” if it is a share");
    expect(rate.read("6.25%", call)).toBe(0.0625);
  });

  it("is what it comes to where a bath's strength was reached", () => {
    expect(reachedStrength("strength", "reached").read(timeOf(40), call)).toBe(timeOf(40));
  });

  it("lies below the whole, and from a tenth on it may be a percentage", () => {
    expect(() => rate.read(1, call)).toThrow("lies below 1");
    expect(() => rate.read(0.999, call)).toThrow("write “0.999%” or “99.9%”");
    expect(() => rate.read(0.1001, call)).toThrow("write “0.1001%” or “10.01%”");
    expect(rate.read(0.1, call)).toBe(0.1);
    expect(rate.read(0.2 / 2, call)).toBe(0.1);
  });
});

describe("the lines of a table that the model works out", () => {
  const lines = linesOfTable(list("readings", { help: "readings", read: numberOf("readings") }));
  const column = (rows: number): number[][] => Array.from({ length: rows }, (_, row) => [row + 1]);

  it("are a hundred at most, so that no cell keeps Excel waiting", () => {
    expect(lines.read(column(100), call)).toHaveLength(100);
    expect(() => lines.read(column(101), call)).toThrow(
      "Readings are 101, and one table takes at most 100: split them.",
    );
  });
});

describe("what is left out", () => {
  it("is room temperature, 25 °C", () => {
    expect(temperatureOf("the buffer").read(null, call)).toBeCloseTo(298.15, 10);
  });

  it("weighs nothing and keeps its row, a share of 0 where the cell is blank and no share where it is a heading", () => {
    const read = weights("weights", "weights").read([["Claim"], [null], [3], [" "]], call);
    expect(read.values).toEqual([0, 0, 3, 0]);
    expect(read.arrange([0, 0, 10, 0])).toEqual([[""], [0], [10], [0]]);
  });

  it("is no number in a list: a heading is passed over, and a list of nothing else refused", () => {
    const volumes = quantityList("volumes", { kind: "volume", help: "volumes", bareUnit: "L" });
    expect(volumes.read([["Volume"], [0], [1000]], call)).toEqual([1]);
    expect(() => volumes.read([["Volume"], [0]], call)).toThrow("Volumes hold no number.");
    expect(() => volumes.read([[0], [" "]], call)).toThrow("Volumes are all blank or 0.");
  });

  it("is no word further down: only a first cell is a heading", () => {
    const volumes = quantityList("volumes", { kind: "volume", help: "volumes", bareUnit: "L" });
    expect(() => volumes.read([["Volume"], [1000], ["ten"], [500]], call)).toThrow("One of the volumes is “ten”");
    expect(() => weights("weights", "weights").read([[12], ["ten"], [10]], call)).toThrow(
      "One of the weights is “ten”, not a number.",
    );
  });

  it("is no text with a digit in it: that is refused and not passed over", () => {
    const volumes = quantityList("volumes", { kind: "volume", help: "volumes", bareUnit: "L" });
    expect(() => volumes.read([[1000], ["about 5 L"]], call)).toThrow("about 5 L");
  });
});
