import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";

import { afterAll, beforeAll, expect, test } from "vitest";

import { type UsedMember, usedMembers } from "../../../scripts/api-floor/used-sets.ts";
import { isAtLeast, overFloor, setsOfManifest } from "../../../scripts/check-api-floor.ts";
import { projectFolder } from "../../../scripts/project.ts";

let folder: string;
let used: readonly UsedMember[];

/** Inside the project, so that the types of Office.js are found. */
beforeAll(() => {
  const results = path.join(projectFolder, "test-results");
  mkdirSync(results, { recursive: true });
  folder = mkdtempSync(path.join(results, "api-floor-"));
  const file = path.join(folder, "sample.ts");
  writeFileSync(
    file,
    [
      "export async function sample(context: Excel.RequestContext): Promise<void> {",
      '  const table = context.workbook.tables.getItem("Readings").load("name,autoFilter/isDataFiltered");',
      '  table.resize("A1:B2");',
      "  context.workbook.worksheets.getActiveWorksheet().pageLayout.zoom = { horizontalFitToPages: 1 };",
      '  context.workbook.worksheets.getActiveWorksheet().getRange("A1").getDirectPrecedents();',
      "  await Office.addin.setStartupBehavior(Office.StartupBehavior.load);",
      "}",
    ].join("\n"),
  );
  used = usedMembers([file]);
});

afterAll(() => {
  rmSync(folder, { recursive: true });
});

test("each member is known with the set that Microsoft's types name: calls, loaded paths, properties of literals", () => {
  const sets = new Map(
    used.map(({ member, sets: [first] }) => [member, `${first?.name ?? ""} ${first?.version ?? ""}`]),
  );
  expect(Object.fromEntries(sets)).toMatchObject({
    "Table.resize": "ExcelApi 1.13",
    "AutoFilter.isDataFiltered": "ExcelApi 1.9",
    "PageLayoutZoomOptions.horizontalFitToPages": "ExcelApi 1.9",
    "Range.getDirectPrecedents": "ExcelApi 1.12",
    "Addin.setStartupBehavior": "SharedRuntime 1.1",
  });
});

test("what is over the floor is named with its line, unless the file asks Excel for the set", () => {
  const floor = new Map([
    ["ExcelApi", "1.12"],
    ["SharedRuntime", "1.1"],
  ]);
  const none = new Map<string, string>();
  expect(overFloor(used, floor, () => none)).toEqual([
    expect.stringMatching(/sample\.ts:3: Table\.resize needs ExcelApi 1\.13$/) as string,
  ]);
  expect(overFloor(used, floor, () => new Map([["ExcelApi", "1.13"]]))).toEqual([]);
});

test("versions are compared by their numbers", () => {
  expect(isAtLeast("1.10", "1.9")).toBe(true);
  expect(isAtLeast("1.9", "1.10")).toBe(false);
  expect(isAtLeast("1.14", "1.14")).toBe(true);
});

test("the manifest's sets are read by name", () => {
  const xml = `<OfficeApp><Requirements><Sets DefaultMinVersion="1.1"><Set Name="ExcelApi" MinVersion="1.10"/><Set Name="SharedRuntime" MinVersion="1.1"/></Sets></Requirements></OfficeApp>`;
  expect([...setsOfManifest(xml)]).toEqual([
    ["ExcelApi", "1.10"],
    ["SharedRuntime", "1.1"],
  ]);
});
