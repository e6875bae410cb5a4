/** The worksheet functions that the job log uses give in the grid what Excel gives. */
import { describe, expect, it } from "vitest";

import { enter, testHost } from "./test-host.ts";

type Cells = (string | number | boolean)[][];

async function results(data: Cells, formulas: readonly string[]): Promise<unknown[]> {
  const host = testHost();
  const width = data[0]?.length ?? 0;
  await enter(host, `A1:${String.fromCharCode(64 + width)}${data.length}`, data);
  const values = await enter(
    host,
    `H1:H${formulas.length}`,
    formulas.map((formula) => [formula]),
  );
  return values.map(([value]) => value);
}

/** Data and results of Microsoft's support article on SUMIFS. */
const fruit: Cells = [
  ["Quantity Sold", "Product", "Salesperson"],
  [5, "Apples", "Tom"],
  [4, "Apples", "Sarah"],
  [15, "Artichokes", "Tom"],
  [3, "Artichokes", "Sarah"],
  [22, "Bananas", "Tom"],
  [12, "Bananas", "Sarah"],
  [10, "Carrots", "Tom"],
  [33, "Carrots", "Sarah"],
];

/** Data and result of Microsoft's support article on MINIFS. */
const grades: Cells = [
  ["Grade", "Weight"],
  [89, 1],
  [93, 2],
  [96, 2],
  [85, 3],
  [91, 1],
  [88, 1],
];

describe("conditional sums and extremes", () => {
  it("follow Microsoft's SUMIFS examples", async () => {
    expect(
      await results(fruit, ['=SUMIFS(A2:A9,B2:B9,"=A*",C2:C9,"Tom")', '=SUMIFS(A2:A9,B2:B9,"<>Bananas",C2:C9,"Tom")']),
    ).toEqual([20, 30]);
  });

  it("follow Microsoft's MINIFS example", async () => {
    expect(await results(grades, ["=MINIFS(A2:A7,B2:B7,1)"])).toEqual([88]);
  });

  it("agree with sums worked by hand", async () => {
    expect(
      await results(grades, [
        '=MAXIFS(A2:A7,B2:B7,"<3")',
        "=AVERAGEIFS(A2:A7,B2:B7,2)",
        '=COUNTIFS(A2:A7,">"&90,B2:B7,1)',
        "=SUMPRODUCT((B2:B7=1)*(A2:A7>88))",
        "=SUMPRODUCT(A2:A7,B2:B7)",
        "=SUMPRODUCT(--(A2:A7>90),B2:B7)",
      ]),
    ).toEqual([96, 94.5, 1, 2, 89 + 186 + 192 + 255 + 91 + 88, 2 + 2 + 1]);
  });

  it("give 0 where nothing matches, AVERAGEIFS an error", async () => {
    expect(
      await results(grades, ["=MINIFS(A2:A7,B2:B7,9)", "=SUMIFS(A2:A7,B2:B7,9)", "=AVERAGEIFS(A2:A7,B2:B7,9)"]),
    ).toEqual([0, 0, "#DIV/0!"]);
  });
});

describe("order and lookup", () => {
  const list: Cells = [
    ["Bath", "pH"],
    ["B-1", 11.4],
    ["B-2", 10.9],
    ["B-3", 11.1],
    ["", ""],
  ];

  it("find the k-th value, the middle and the place", async () => {
    expect(
      await results(list, [
        "=LARGE(B2:B5,1)",
        "=LARGE(B2:B5,3)",
        "=SMALL(B2:B5,2)",
        "=MEDIAN(B2:B5)",
        '=MATCH("b-2",A2:A5,0)',
        '=INDEX(B2:B5,MATCH("B-3",A2:A5,0))',
      ]),
    ).toEqual([11.4, 10.9, 11.1, 11.1, 2, 11.1]);
  });

  it("say #N/A for what is not there", async () => {
    expect(await results(list, ['=MATCH("B-9",A2:A5,0)'])).toEqual(["#N/A"]);
  });

  it("count numbers and filled cells, not blanks", async () => {
    expect(
      await results(list, ["=COUNT(B2:B5)", "=COUNTA(A2:A5)", '=COUNTIFS(A2:A5,"")', '=COUNTIFS(A2:A5,"<>")']),
    ).toEqual([3, 3, 1, 3]);
  });
});

describe("logic and text", () => {
  it("treat a blank as equal to an empty text and to zero", async () => {
    expect(await results([[""]], ['=A1=""', "=A1=0", '=IF(A1="","",1)', "=ISNUMBER(A1)", "=A1"])).toEqual([
      true,
      true,
      "",
      false,
      0,
    ]);
  });

  it("compare texts without regard to case", async () => {
    expect(await results([["check"]], ['=A1="CHECK"', '=NOT(A1="check")', '=AND(A1="check",OR(FALSE,TRUE))'])).toEqual([
      true,
      false,
      true,
    ]);
  });

  it("round half away from zero, as Excel does", async () => {
    expect(
      await results(
        [[""]],
        [
          "=ROUND(2.5,0)",
          "=ROUND(-2.5,0)",
          "=ROUND(1.005,2)",
          "=ABS(-3.6)",
          "=ROUND(121.1749,3)",
          "=ROUND(1234.5,-2)",
          "=ROUND(0,2)",
        ],
      ),
    ).toEqual([3, -3, 1.01, 3.6, 121.175, 1200, 0]);
  });

  it("write numbers and dates as text", async () => {
    expect(
      await results(
        [[46447.40625]],
        ['=TEXT(A1,"yyyy-mm-dd hh:mm")', '=TEXT(1234.567,"#,##0.00")', '=TEXT(0.25,"0%")'],
      ),
    ).toEqual(["2027-03-01 09:45", "1,234.57", "25%"]);
  });
});

/** Where the grid is known to differ, so that the list in DEVELOPERS.md stays true. */
describe("known differences from Excel", () => {
  it("are a power under a minus sign (Excel: 4) and texts of numbers on the half (Excel: 29%)", async () => {
    expect(await results([[""]], ["=-2^2", '=TEXT(0.285,"0%")'])).toEqual([-4, "28%"]);
  });

  it("are error words: #VALUE! where Excel says #NUM! or #REF!", async () => {
    expect(await results([[1], [2]], ["=SQRT(-1)", "=LARGE(A1:A2,3)", "=INDEX(A1:A2,9)"])).toEqual([
      "#VALUE!",
      "#VALUE!",
      "#VALUE!",
    ]);
  });
});
