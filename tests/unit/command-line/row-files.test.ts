import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";

import { afterAll, beforeAll, describe, expect, it } from "vitest";

import { fileAccess } from "../../../src/command-line/files.ts";
import { LogRows } from "../../../src/command-line/rollup/log-rows.ts";
import { inUtc, isZone, monthOf, wallTime } from "../../../src/command-line/rollup/wall-time.ts";
import { zonesOf } from "../../../src/command-line/rollup/zones.ts";
import { parquetFiles } from "./parquet-files.ts";
import { smallJob } from "./small-job.ts";

const utc = (wall: string, zone: string): string => inUtc(new Date(`${wall}Z`), zone).toISOString();

describe("a moment by the shop's clock", () => {
  it("is that of Excel's serial number, to the second", () => {
    // Microsoft's page on date systems gives 1 January 2008 the number 39448 (from memory).
    expect(wallTime(39448)?.toISOString()).toBe("2008-01-01T00:00:00.000Z");
    expect(wallTime(39448 + 0.1 + 0.2)?.toISOString()).toBe("2008-01-01T07:12:00.000Z");
    for (const none of [0, -1, 3e6, Number.NaN, "39448", undefined]) expect(wallTime(none)).toBeUndefined();
    expect([monthOf(wallTime(39448)), monthOf(undefined)]).toEqual(["2008-01", "undated"]);
  });

  it("is turned into UTC by the zone's rules, in summer and in winter", () => {
    // 15 U.S.C. 260a: from 2 a.m. on the second Sunday of March to 2 a.m. on the first of November an hour ahead.
    expect(utc("2027-03-14T01:59:59", "America/Denver")).toBe("2027-03-14T08:59:59.000Z");
    expect(utc("2027-03-14T03:00:00", "America/Denver")).toBe("2027-03-14T09:00:00.000Z");
    expect(utc("2027-07-01T12:00:00", "America/Denver")).toBe("2027-07-01T18:00:00.000Z");
    expect(utc("2027-07-01T12:00:00", "Asia/Kolkata")).toBe("2027-07-01T06:30:00.000Z");
  });

  it("of an hour that comes twice is the first, of one that is left out goes by the clock before", () => {
    // RFC 5545, 3.3.5, has these two examples for New York in 2007.
    expect(utc("2007-11-04T01:30:00", "America/New_York")).toBe("2007-11-04T05:30:00.000Z");
    expect(utc("2007-03-11T02:30:00", "America/New_York")).toBe("2007-03-11T07:30:00.000Z");
  });

  it("goes by the zone of its shop, or else by that of all", () => {
    const of = zonesOf("UTC", '{ "Small Works": "America/Denver" }');
    expect([of("small works"), of("Other Works"), zonesOf(undefined, undefined)("any")]).toEqual([
      "America/Denver",
      "UTC",
      undefined,
    ]);
    expect([isZone("Europe/Berlin"), isZone("Denver")]).toEqual([true, false]);
  });
});

describe("row files", () => {
  const { rows } = new LogRows("small.xlsx", smallJob, new Map(), () => "America/Denver");

  it("are the same bytes twice", () => {
    expect(parquetFiles(rows)).toEqual(parquetFiles(rows));
  });

  it("stand in folders whose names every disk can hold", () => {
    const [log] = rows.logs;
    if (log === undefined) throw new Error("There is no log.");
    const named = (shop: string): string =>
      parquetFiles({ ...rows, logs: [{ ...log, shop }] }).find((file) => file.path.startsWith("logs/"))?.path ?? "";
    expect(named('A/B: 50% "C"? é.')).toBe("logs/shop=A%2FB%3A 50%25 %22C%22%3F é%2E/month=2027-03/rows.parquet");
    expect(named("..\\..")).toBe("logs/shop=..%5C.%2E/month=2027-03/rows.parquet");
  });
});

describe("a folder of row files", () => {
  let folder = "";
  const files = [{ path: "logs/shop=A/rows.parquet", content: new Uint8Array([1]) }];
  const ours = { ours: ["logs"] };

  beforeAll(async () => {
    folder = await mkdtemp(path.join(tmpdir(), "bathsheet-folder-"));
  });

  afterAll(() => rm(folder, { recursive: true }));

  it("is written whole, and only replaced where that is asked for and all in it is ours", async () => {
    const rowsFolder = path.join(folder, "rows");
    await fileAccess.writeFolder(`${rowsFolder}/`, files, { replace: false, ...ours });
    const other = [{ path: "logs/shop=B/rows.parquet", content: new Uint8Array([2]) }];
    await expect(fileAccess.writeFolder(rowsFolder, other, { replace: false, ...ours })).rejects.toThrow(
      "it is there already",
    );
    await fileAccess.writeFolder(rowsFolder, other, { replace: true, ...ours });
    expect(await readdir(path.join(rowsFolder, "logs"))).toEqual(["shop=B"]);
    await writeFile(path.join(rowsFolder, "mine.txt"), "mine");
    await expect(fileAccess.writeFolder(rowsFolder, files, { replace: true, ...ours })).rejects.toThrow(
      "it holds mine.txt, which is none of ours",
    );
    expect(await readFile(path.join(rowsFolder, "mine.txt"), "utf8")).toBe("mine");
  });

  it("leaves nothing where it cannot be written", async () => {
    await mkdir(path.join(folder, "empty"));
    const clashing = [...files, { path: "logs", content: new Uint8Array() }];
    await expect(
      fileAccess.writeFolder(path.join(folder, "new"), clashing, { replace: false, ...ours }),
    ).rejects.toThrow(/new: /);
    expect((await readdir(folder)).sort()).toEqual(["empty", "rows"]);
  });
});
