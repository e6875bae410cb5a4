/** Which events come after which write, and when. */
import { type CheckBench, type ExcelCheck, finding } from "../excel-check.ts";

interface Deed {
  readonly name: string;
  readonly act: (sheet: Excel.Worksheet) => void;
}

const deeds: readonly Deed[] = [
  {
    name: "value",
    act: (sheet) => {
      sheet.getRange("A1").values = [[29]];
    },
  },
  {
    name: "formula",
    act: (sheet) => {
      sheet.getRange("B1").formulas = [["=A1*2"]];
    },
  },
  {
    name: "BATH formula",
    act: (sheet) => {
      sheet.getRange("C1").formulas = [['=BATH.DOSE(A1,"1+28")']];
    },
  },
  {
    name: "value that changes both formulas",
    act: (sheet) => {
      sheet.getRange("A1").values = [[58]];
    },
  },
  {
    name: "number format",
    act: (sheet) => {
      sheet.getRange("A1").numberFormat = [["0.0"]];
    },
  },
];

interface SheetEvent {
  readonly worksheetId: string;
  readonly address?: string;
}

type Handler = (event: SheetEvent) => Promise<void>;

type Listen = (context: Excel.RequestContext, handler: Handler) => { readonly remove: () => void };

interface Heard {
  readonly deed: string;
  readonly events: readonly string[];
}

/** Does the deeds one by one, and tells what is heard within a second after each. */
async function heardAfter({ context, sheet, pause }: CheckBench, listen: Listen): Promise<readonly Heard[]> {
  sheet.load("id");
  await context.sync();
  let events: string[] = [];
  let start = performance.now();
  const registration = listen(context, ({ worksheetId, address }) => {
    const after = `after ${String(Math.round(performance.now() - start))} ms`;
    if (worksheetId === sheet.id) events.push((address ?? "") === "" ? after : `${address ?? ""} ${after}`);
    return Promise.resolve();
  });
  await context.sync();
  try {
    const heard: Heard[] = [];
    const doNext = async (at: number): Promise<void> => {
      const deed = deeds[at];
      if (deed === undefined) return;
      events = [];
      start = performance.now();
      deed.act(sheet);
      await context.sync();
      await pause(1000);
      heard.push({ deed: deed.name, events });
      await doNext(at + 1);
    };
    await doNext(0);
    return heard;
  } finally {
    registration.remove();
    await context.sync();
  }
}

const told = (heard: readonly Heard[]): string =>
  heard.map(({ deed, events }) => `${deed}: ${events.length === 0 ? "none" : events.join(" and ")}`).join("; ");

const cameAfter = (heard: readonly Heard[], ...names: readonly string[]): boolean =>
  heard.filter(({ deed }) => names.includes(deed)).every(({ events }) => events.length > 0);

const does = `Written one by one, a second apart: ${deeds.map(({ name }) => name).join(", ")}. Each event with its time.`;

export const eventChecks: readonly ExcelCheck[] = [
  {
    id: "changed-events",
    title: "When onChanged comes",
    asks: does,
    expected: "After each value and formula that is written, or the pane would not follow the sheet",
    run: async (bench) => {
      const heard = await heardAfter(bench, (context, handler) => context.workbook.worksheets.onChanged.add(handler));
      return finding(
        cameAfter(heard, "value", "formula", "BATH formula", "value that changes both formulas"),
        told(heard),
      );
    },
  },
  {
    id: "calculated-events",
    title: "When onCalculated comes",
    asks: does,
    expected: "After the value that changes both formulas, when the answer of BATH.DOSE is in",
    run: async (bench) => {
      const heard = await heardAfter(bench, (context, handler) =>
        context.workbook.worksheets.onCalculated.add(handler),
      );
      return finding(cameAfter(heard, "value that changes both formulas"), told(heard));
    },
  },
];
