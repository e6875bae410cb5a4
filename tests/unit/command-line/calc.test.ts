import fc from "fast-check";
import { describe, expect, it } from "vitest";
import * as z from "zod";

import { catalogue } from "../../../functions/catalogue.ts";
import { runCommand } from "./run-command.ts";

const answered = z.object({ value: z.unknown(), unit: z.string().optional() });

async function valueOf(formula: string): Promise<unknown> {
  const { code, out, said } = await runCommand(["calc", formula, "--json"]);
  expect(said).toEqual([]);
  expect(code).toBe(0);
  return answered.parse(JSON.parse(out)).value;
}

describe("every worked example of the functions", () => {
  const examples = catalogue.flatMap(({ examples: own }) => own);

  it.each(examples)("$formula", async ({ formula, result, tolerance = 0 }) => {
    const value = await valueOf(formula);
    const flat = [value].flat(2);
    const wanted = [result].flat(2).map((cell) => cell ?? "");
    expect(flat).toHaveLength(wanted.length);
    wanted.forEach((cell, index) => {
      if (typeof cell === "number")
        expect(Math.abs(Number(flat[index]) - cell)).toBeLessThanOrEqual(tolerance + 1e-12 * Math.abs(cell));
      else expect(flat[index]).toBe(cell);
    });
  });
});

describe("arithmetic as Excel has it", () => {
  // Microsoft, "Calculation operators and precedence in Excel": the sign binds tighter than ^, ^ goes from left to right.
  it.each([
    ["=-2^2", 4],
    ["=2^3^2", 64],
    ["=1+2*3%", 1.06],
    ["=(1+2)*3", 9],
    ['="a"&1+1', "a2"],
    ["=1=1", true],
    ['="A"="a"', true],
    ["=IF(2>1,10,1/0)", 10],
    ["=SUM({1,2;3,4})", 10],
    ["=INDEX({1,2;3,4},2,1)", 3],
    ["=ROUND(2.675,2)", 2.68],
    ["={1;2}*10", [[10], [20]]],
    ["=MAX(BATH.SHARE(578.99,{12;11;10}))", 210.54],
    // An argument is reckoned before the call.
    ['=BATH.UNITCONVERT(2*3,"gal","gal")', 6],
  ])("%s", async (formula, value) => {
    expect(await valueOf(formula)).toEqual(value);
  });

  it("shares a total to the cent, whatever stands around it", async () => {
    expect(await valueOf("=SUM(BATH.SHARE(578.99,{12;11;10}))")).toBeCloseTo(578.99, 10);
  });
});

describe("units", () => {
  it("are those of the call's system", async () => {
    expect((await runCommand(["calc", "=BATH.TOPUP(4.18,11.42,10.83)"])).out).toMatch(/^3\.39\d* US gal\n$/);
    expect(
      (await runCommand(["calc", '=BATH.TOPUP(19.5,11.62,11.05,"hydroxide","22 C","0 mg/L","acid",,,,"metric")'])).out,
    ).toMatch(/^14\.8\d* L\n$/);
  });

  it("are not said of what is made of a result", async () => {
    expect((await runCommand(["calc", "=BATH.TOPUP(4.18,11.42,10.83)*2"])).out).toMatch(/^6\.78\d*\n$/);
  });
});

describe("what is refused, in one sentence and with an exit code", () => {
  it.each([
    ['=BATH.TOPUP(4.18,11.42,"x")', "#VALUE! BATH.TOPUP: Reading is “x”, not a number."],
    ["=BATH.TOPPUP(1)", "There is no function BATH.TOPPUP here; BATH.TOPUP is the nearest."],
    ["=1/0", "#DIV/0! Something is divided by 0."],
    ["=1+A1", "The formula names cells, and there are none here; write the values in their place."],
    [
      "=BATH.UNITCONVERT(1,gal,L)",
      'The formula names gal, and there are no names here; a text stands in double quotes, as "gal".',
    ],
    ["=(1+2", "The formula cannot be read: a bracket is not closed."],
    ["=1)", "The formula cannot be read: a closing bracket has none that it closes."],
    ['="a', "The formula cannot be read: a text in double quotes is not closed."],
    ["=BATH.DOSE(1;2)", "The formula cannot be read: arguments are separated by commas."],
    ["=BATH.DOSE(121,'1+28')", "The formula cannot be read: texts stand in double quotes."],
    ["=1+", "The formula cannot be read: something is missing at its end."],
    ["=", "The formula cannot be read: it is empty."],
    ["=1 2", "The formula cannot be read: an operator, a comma or a value is missing or stands where none can stand."],
    [
      "=ABS(BATH.SHARE(10,{1;2}))",
      "ABS takes single values here, and one of its arguments gives several cells; INDEX takes one of them.",
    ],
    ["={1;2}+{1,2}", "The operator + stands between 2 by 1 and 1 by 2 cells, and these do not fit together."],
    ["=ROUND(1)", "ROUND takes 2 arguments, and 1 is given."],
    ["=9^999", "#NUM! A result on the way is too large for a number, or none at all."],
    ["=(-8)^0.5", "#NUM! A result on the way is too large for a number, or none at all."],
    ["=#N/A", "#N/A There is no such value."],
    [
      `=${"(".repeat(65)}1${")".repeat(65)}`,
      "The formula is nested more than 64 levels deep, and Excel takes no deeper one.",
    ],
    [`=${"1+".repeat(5000)}1`, "The formula has more than 8,192 characters, and Excel takes no longer one."],
  ])("%s", async (formula, sentence) => {
    const { code, out, said } = await runCommand(["calc", formula]);
    expect(said).toEqual([sentence]);
    expect(out).toBe("");
    expect(code).toBe(1);
  });

  it("an error is JSON, too, where JSON was asked for", async () => {
    const { code, out, said } = await runCommand(["calc", "=1/0", "--json"]);
    expect(JSON.parse(out)).toEqual({ formula: "=1/0", error: "#DIV/0!", reason: "Something is divided by 0." });
    expect(said).toEqual([]);
    expect(code).toBe(1);
  });

  it("works the longest formula that Excel takes out", async () => {
    expect(await valueOf(`=${"1+".repeat(4095)}1`)).toBe(4096);
  });

  it("answers or refuses whatever is typed, and is never at fault itself", async () => {
    const pieces = [
      "1",
      "2.5",
      "-",
      "+",
      "*",
      "/",
      "^",
      "%",
      "(",
      ")",
      "{",
      "}",
      ",",
      ";",
      '"',
      "BATH.DOSE(",
      "SUM(",
      "IF(",
      "A1",
      "x",
      " ",
      "#N/A",
      "&",
      "=",
      "<",
      "1e308",
      "TRUE",
      "[",
      "]",
      "!",
      "'",
      "@",
      "#",
    ];
    await fc.assert(
      fc.asyncProperty(fc.array(fc.constantFrom(...pieces), { maxLength: 12 }), async (parts) => {
        const { code, out, said } = await runCommand(["calc", `=${parts.join("")}`]);
        expect([0, 1]).toContain(code);
        expect(out).not.toMatch(/NaN|Infinity|undefined|\[object/);
        expect(said.join("")).not.toMatch(/NaN|undefined|\[object/);
      }),
    );
  });
});

describe("how a command is written", () => {
  it.each([
    [[], "A command is missing; bathsheet --help lists them."],
    [["cacl"], 'There is no command "cacl"; "calc" is the nearest.'],
    [["calc"], 'Something is missing after "calc"; write bathsheet calc FORMULA [--json].'],
    [
      ["calc", "=1", "+1"],
      'There is a word too many after "calc", perhaps for want of quotes around one that holds blanks; write bathsheet calc FORMULA [--json].',
    ],
    [["calc", "=1", "--jsn"], "bathsheet calc has no option --jsn; --json is the nearest."],
    [["calc", "=1", "--json=yes"], "--json takes nothing after it."],
    [["log", "job.json", "-o"], "FILE.xlsx is missing after -o."],
    [["log", "job.json", "-o", "--replace"], "FILE.xlsx is missing after -o."],
    [["log", "job.json", "-o", "a.xlsx", "-o", "b.xlsx"], "-o is given twice."],
    [
      ["log", "job.json"],
      "bathsheet log wants either -o FILE.xlsx to write the log, or --check to look the job over alone.",
    ],
  ])("%j", async (args, sentence) => {
    const { code, out, said } = await runCommand(args);
    expect(said).toEqual([sentence]);
    expect(out).toBe("");
    expect(code).toBe(2);
  });

  it.each(["calc", "functions", "log", "read"])("%s has help, by either spelling", async (name) => {
    const { code, out } = await runCommand([name, "--help"]);
    expect(out.startsWith(`bathsheet ${name} `)).toBe(true);
    expect(code).toBe(0);
    expect((await runCommand(["help", name])).out).toBe(out);
    expect((await runCommand(["--help"])).out).toContain(`  ${name}`);
  });
});

describe("bathsheet functions", () => {
  it("lists every function once", async () => {
    const { out } = await runCommand(["functions"]);
    expect([...out.matchAll(/^ {2}BATH\.(\S+)/gm)].map(([, id]) => id).sort()).toEqual(
      catalogue.map(({ id }) => id).sort(),
    );
  });

  it.each(catalogue.map(({ id }) => id))("helps with %s", async (id) => {
    const { out, code } = await runCommand(["functions", id.toLowerCase()]);
    expect(out.startsWith(`=BATH.${id}(`)).toBe(true);
    expect(out).not.toMatch(/undefined|\[object/);
    expect(code).toBe(0);
  });

  it("names the nearest where there is none of the name", async () => {
    const { said, code } = await runCommand(["functions", "TOPPUP"]);
    expect(said).toEqual(["There is no function TOPPUP; BATH.TOPUP is the nearest."]);
    expect(code).toBe(1);
  });
});
