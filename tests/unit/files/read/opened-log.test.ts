/** @module-tag landing */
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { beforeAll, describe, expect, it } from "vitest";

import { OlderLog } from "../../../../src/excel/log-problems.ts";
import { buildLog, editLog, readLog, upgradeLog } from "../../../../src/excel/log-workbook.ts";
import type { KnownValue, ValueOf } from "../../../../src/files/cell-value.ts";
import { filledFromPlan } from "../../../../src/files/read/fill-from-plan.ts";
import { readWorkbook } from "../../../../src/files/read/read-workbook.ts";
import { writeWorkbook } from "../../../../src/files/xlsx-writer.ts";
import { jobLog } from "../../../../src/joblog/job-log.ts";
import { layOut } from "../../../../src/joblog/layout/lay-out.ts";
import type { LogSnapshot } from "../../../../src/joblog/model/log-snapshot.ts";
import type { WorkbookPlan } from "../../../../src/joblog/model/plan.ts";
import { readState } from "../../../../src/state/read-state.ts";
import type { WorkbookState } from "../../../../src/state/workbook-state.ts";
import type { Host } from "../../../../src/workbench/host/create-host.ts";
import { firstTwoDays } from "../../../demo/days/demo-week.ts";
import { contentIn } from "../../../demo/metric/week-in.ts";
import { contentOfThen, earlierLog, sheetsAndColumnsLater } from "../../excel/log/earlier-log.ts";
import { openWorkbook } from "../../excel/log/open-workbook.ts";
import { differences, type Facts, stateFacts } from "./facts.ts";
import { gridFunctions } from "./written-logs.ts";

interface Written {
  readonly file: Uint8Array;
  /** The host in which the log was built, with the values that went into the file. */
  readonly host: Host;
  readonly log: LogSnapshot;
}

function knownValue(value: string | number | boolean): KnownValue {
  return typeof value === "string" && value.startsWith("#") ? { error: value } : value;
}

function valuesIn(host: Host, plan: WorkbookPlan): ValueOf {
  const values = new Map(plan.sheets.map(({ name }) => [name, host.values(name)]));
  return (sheet, row, column) => knownValue(values.get(sheet)?.[row]?.[column] ?? "");
}

/** The two demo days built by the add-in, worked out, and written into a file. */
async function written(system: "US" | "metric"): Promise<Written> {
  const host = openWorkbook();
  const content = system === "US" ? firstTwoDays : contentIn(firstTwoDays, system);
  const plan = layOut(jobLog, { system }, content);
  await buildLog(plan);
  const log = await readLog();
  if (log === undefined) throw new Error("There is no log.");
  return { host, log, file: await writeWorkbook(plan, valuesIn(host, plan)) };
}

function opened(file: Uint8Array): { readonly host: Host; readonly state: WorkbookState } {
  const { state } = filledFromPlan(readWorkbook(file, gridFunctions));
  const host = openWorkbook();
  // As it comes from a worker.
  host.restore(readState(structuredClone(state)));
  return { host, state };
}

/** The host holds names without dollar signs, headings of calculated columns in small letters and some ranges of a chart's own sheet with the sheet. */
function alike(facts: Facts): Facts {
  return new Map(
    [...facts].map(([key, fact]) => {
      const chartSheet = /^series ([A-Za-z]+) /.exec(key)?.[1];
      if (chartSheet !== undefined) return [key, fact.replaceAll(`"${chartSheet}!`, '"')];
      if (key.startsWith("calculated column")) return [key.toLowerCase(), fact];
      return [key, key.startsWith("name ") ? fact.replaceAll("$", "") : fact];
    }),
  );
}

/** Two cells share a line between them in the grid, which has one color only; and it draws numbers on axes in its own way. */
function isTheGridsOwn(difference: string): boolean {
  return /^(?:border|axis formats) /.test(difference);
}

/** What the writer of files and the add-in in the workbook do each in their own way. */
function isTheWritersOwn(difference: string): boolean {
  return /^(?:look|height|sheets) /.test(difference) || /^\S+ Sheet1/.test(difference);
}

describe.each(["US", "metric"] as const)("a log in %s units that was opened from a file", (system) => {
  let before: Written;

  beforeAll(async () => {
    before = await written(system);
  });

  it("is in the grid what it was in the file", () => {
    const { host, state } = opened(before.file);
    const found = differences(alike(stateFacts(state)), alike(stateFacts(host.save())));
    expect(found.filter((difference) => !isTheGridsOwn(difference))).toEqual([]);
  });

  it("shows in every cell what it showed before it was written, and reads the same to the add-in", async () => {
    const { host, state } = opened(before.file);
    let cells = 0;
    for (const { name } of state.sheets) {
      const values = host.values(name);
      cells += values.flat().filter((value) => value !== "").length;
      expect(values, name).toEqual(before.host.values(name));
    }
    expect(cells).toBeGreaterThan(2000);
    expect(await readLog()).toEqual(before.log);
  });

  it("differs from the one that was never written in looks and heights that the writers choose alone", () => {
    const { host } = opened(before.file);
    const found = differences(alike(stateFacts(before.host.save())), alike(stateFacts(host.save()))).filter(
      (difference) => !isTheWritersOwn(difference) && !isTheGridsOwn(difference),
    );
    expect(found).toEqual([]);
  });

  it("takes a reading as if nothing had happened", async () => {
    const rows = [
      {
        table: "readings",
        row: {
          bath: "B-T1-0301",
          when: 46_449.4,
          purpose: "check",
          ph: 11.3,
          temperature: system === "US" ? 77 : 25,
        },
      },
    ] as const;
    const { host } = opened(before.file);
    await editLog({ rows });
    const after = await readLog();
    const twin = openWorkbook();
    twin.restore(before.host.save());
    await editLog({ rows });
    expect(after).toEqual(await readLog());
    expect(after).not.toEqual(before.log);
    expect(host.values("Readings")).toEqual(twin.values("Readings"));
  });
});

describe("a log of an earlier version that was opened from a file", () => {
  it("is upgraded as one that was never written", async () => {
    const earlier = earlierLog(sheetsAndColumnsLater);
    const plan = layOut(earlier, { system: "US" }, contentOfThen(earlier, firstTwoDays));
    const built = openWorkbook();
    await buildLog(plan);
    const file = await writeWorkbook(plan, valuesIn(built, plan));
    const read = filledFromPlan(readWorkbook(file, gridFunctions));
    expect(read.ownLog).toEqual({ version: earlier.version, system: "US" });
    const { host } = opened(file);
    await expect(readLog()).rejects.toThrow(OlderLog);
    const today = layOut(jobLog, { system: "US" }, { fields: {}, rows: {} });
    const report = await upgradeLog(today);
    const after = await readLog();
    const twin = openWorkbook();
    twin.restore(built.save());
    expect(await upgradeLog(today)).toEqual(report);
    expect(after).toEqual(await readLog());
    for (const { name } of host.save().sheets) expect(host.values(name), name).toEqual(twin.values(name));
  });
});

describe("a person's own sheet beside the log", () => {
  const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

  it("comes back with its formulas, and what the grid cannot work out shows the file's value", async () => {
    const { file } = await written("US");
    const parts = unzipSync(file);
    const text = (name: string): string => strFromU8(parts[name] ?? new Uint8Array());
    parts["xl/worksheets/sheet99.xml"] = strToU8(
      `<worksheet xmlns="${main}"><sheetData>${[
        "<c><v>2</v></c><c><f>A1*MAX(Readings[pH as read])</f><v>22.9</v></c>",
        '<c t="inlineStr"><is><t>007</t></is></c><c><f>_xlfn.LET(_xlpm.a,A1,_xlpm.a*3)</f><v>6</v></c>',
        '<c t="inlineStr"><is><t>=no formula</t></is></c><c><f>B2+1</f><v>7</v></c>',
        '<c t="inlineStr"><is><t>50%</t></is></c><c><f>_xldudf_bath_hardnessclass(400)</f><v>0</v></c>',
      ]
        .map((cells) => `<row>${cells}</row>`)
        .join("")}</sheetData></worksheet>`,
    );
    parts["xl/workbook.xml"] = strToU8(
      text("xl/workbook.xml").replace("</sheets>", '<sheet name="My prices" sheetId="99" r:id="rId999"/></sheets>'),
    );
    parts["xl/_rels/workbook.xml.rels"] = strToU8(
      text("xl/_rels/workbook.xml.rels").replace(
        "</Relationships>",
        '<Relationship Id="rId999" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet" Target="worksheets/sheet99.xml"/></Relationships>',
      ),
    );
    const { host, state } = opened(zipSync(parts));
    const own = state.sheets.find(({ name }) => name === "My prices");
    expect(own?.kept).toEqual([[1, 1, 6]]);
    const [first, second, third, fourth] = host.values("My prices");
    expect(first?.[0]).toBe(2);
    expect(first?.[1]).toBeGreaterThan(20);
    expect(second).toEqual(["007", 6]);
    expect(third).toEqual(["=no formula", 7]);
    expect(fourth).toEqual(["50%", "very hard"]);
    const saved = host.save().sheets.find(({ name }) => name === "My prices");
    expect(saved?.kept).toEqual([[1, 1, 6]]);
    expect(saved?.worked.map(([row, column, , formula]) => [row, column, saved.formulas[formula]])).toEqual([
      [0, 1, "=A1*MAX(Readings[pH as read])"],
      [1, 1, "=LET(a,A1,a*3)"],
      [2, 1, "=B2+1"],
      [3, 1, "=BATH.HARDNESSCLASS(400)"],
    ]);
    expect(saved?.typed.map(([, , , value]) => value)).toEqual([2, "007", "=no formula", "50%"]);
  });
});
