/** What the rows have that a table gains by `Table.resize`. */
import { type CheckBench, type ExcelCheck, type Finding, finding, spelled } from "../excel-check.ts";

const formula = "=BathCheckGrown[[#This Row],[pH as read]]*2";

/** A table of two rows, A1:C3: a list, a number with a look and a rule of color, a formula. */
async function prepareTable({ context, sheet }: CheckBench): Promise<Excel.Table> {
  sheet.getRange("A1:C3").values = [
    ["Kind", "pH as read", "Doubled"],
    ["check", 9.5, ""],
    ["check", 10.5, ""],
  ];
  const table = sheet.tables.add("A1:C3", true);
  table.name = "BathCheckGrown";
  sheet.getRange("A2:A3").dataValidation.rule = { list: { inCellDropDown: true, source: "check,baseline" } };
  sheet.getRange("B2:B3").numberFormat = [["0.00"], ["0.00"]];
  sheet.getRange("C2:C3").formulas = [[formula], [formula]];
  const rule = sheet.getRange("B2:B3").conditionalFormats.add("Custom");
  rule.custom.rule.formula = "=$B2>10";
  rule.custom.format.fill.color = "#FFE08A";
  await context.sync();
  return table;
}

/** How many conditional formats reach the column, and its last cell, after growth from 2 rows to 5. */
async function rulesAfter({ context, sheet }: CheckBench): Promise<Finding> {
  const counts = ["B2:B6", "B6"].map((address) => sheet.getRange(address).conditionalFormats.getCount());
  await context.sync();
  const [inColumn, atLast] = counts.map(({ value }) => value);
  const seen = `${String(inColumn)} in the column, ${String(atLast)} at its last cell`;
  return finding(inColumn === 1 && atLast === 1, seen);
}

export const grownTableChecks: readonly ExcelCheck[] = [
  {
    id: "validation-of-grown-rows",
    title: "Lists in rows gained by resizing",
    asks: "A table of 2 rows with a list in its first column is resized to 5 rows; the kind of rule in its last cell.",
    expected: "List, as in the rows above",
    run: async (bench) => {
      const table = await prepareTable(bench);
      table.resize("A1:C6");
      const last = bench.sheet.getRange("A6").dataValidation.load("type");
      await bench.context.sync();
      return finding(last.type === "List", last.type);
    },
  },
  {
    id: "number-format-of-grown-rows",
    title: "Number formats in rows gained by resizing",
    asks: "The same table with the format 0.00 in its second column; the format of its last cell.",
    expected: "0.00, as in the rows above",
    run: async (bench) => {
      const table = await prepareTable(bench);
      table.resize("A1:C6");
      const last = bench.sheet.getRange("B6").load("numberFormat");
      await bench.context.sync();
      const format: unknown = last.numberFormat[0]?.[0];
      return finding(format === "0.00", spelled(format));
    },
  },
  {
    id: "formula-of-grown-rows",
    title: "Formulas in rows gained by resizing",
    asks: "The same table with one formula in its third column; what stands in its last cell.",
    expected: "The column's formula, filled in by Excel",
    run: async (bench) => {
      const table = await prepareTable(bench);
      table.resize("A1:C6");
      const cells = bench.sheet.getRange("C2:C6").load("formulas");
      await bench.context.sync();
      const [first, last] = [cells.formulas.at(0)?.[0], cells.formulas.at(-1)?.[0]] as unknown[];
      return finding(last !== "" && last === first, spelled(last));
    },
  },
  {
    id: "value-among-formulas",
    title: "A value in a column of formulas",
    asks: "The same table with a value over the formula of its first row, resized by a row that gets the formula; what stands in all of them.",
    expected: "The value in the first row, the formula in the others",
    run: async (bench) => {
      const table = await prepareTable(bench);
      bench.sheet.getRange("C2").values = [[19]];
      await bench.context.sync();
      table.resize("A1:C4");
      bench.sheet.getRange("C4").formulas = [[formula]];
      const cells = bench.sheet.getRange("C2:C4").load("formulas");
      await bench.context.sync();
      const [first, ...others] = cells.formulas.map(([cell]): unknown => cell);
      const stays = first === 19 && others.every((cell) => String(cell).startsWith("="));
      return finding(stays, [first, ...others].map(spelled).join(", "));
    },
  },
  {
    id: "conditional-format-of-grown-rows",
    title: "Conditional formats after growth",
    asks: "The same table with one conditional format on its second column, resized three times by a row; how many there are.",
    expected: "1 in the column, 1 at its last cell",
    run: async (bench) => {
      const table = await prepareTable(bench);
      for (const address of ["A1:C4", "A1:C5", "A1:C6"]) table.resize(address);
      await bench.context.sync();
      return rulesAfter(bench);
    },
  },
  {
    id: "conditional-format-of-copied-looks",
    title: "Conditional formats where looks were copied",
    asks: 'The same growth, and copyFrom(…, "Formats") from the row above into each new row; how many there are.',
    expected: "1 in the column, 1 at its last cell; more are fragments of one rule",
    run: async (bench) => {
      const { context, sheet } = bench;
      const table = await prepareTable(bench);
      table.resize("A1:C6");
      for (const row of [4, 5, 6])
        sheet
          .getRange(`A${String(row)}:C${String(row)}`)
          .copyFrom(`A${String(row - 1)}:C${String(row - 1)}`, "Formats");
      await context.sync();
      return rulesAfter(bench);
    },
  },
];
