import { readFile } from "node:fs/promises";
import path from "node:path";

import { strToU8, zipSync } from "fflate";
import { describe, expect, it } from "vitest";

import { samplesFolder, weekSample } from "../../../scripts/build-samples.ts";
import { planOf } from "../../../src/command-line/job/write-log.ts";
import { jobLog } from "../../../src/joblog/job-log.ts";
import { cellAddress } from "../../../src/joblog/layout/addresses.ts";
import { packed } from "../files/read/packed.ts";
import { at, cellsOf, partsOf } from "../files/read-parts.ts";
import { changed, ofVersion } from "./changed-log.ts";
import { daysJob, weekJob } from "./jobs.ts";
import { runCommand } from "./run-command.ts";

async function written(job: object | string): Promise<Uint8Array> {
  const text = typeof job === "string" ? job : JSON.stringify(job);
  const { code, said, written: files } = await runCommand(["log", "job.json", "-o", "job.xlsx"], { "job.json": text });
  expect(said.filter((line) => !line.endsWith("left blank."))).toEqual([]);
  expect(code).toBe(0);
  const file = files.get("job.xlsx");
  if (file === undefined) throw new Error("No log was written.");
  return file;
}

async function readBack(file: Uint8Array): Promise<string> {
  const { code, out, said } = await runCommand(["read", "job.xlsx", "--json"], { "job.xlsx": file });
  expect(said).toEqual([]);
  expect(code).toBe(0);
  return out;
}

/** What stays of a job in JSON: blank cells and tables are as good as absent. */
const essence = (value: unknown): unknown =>
  JSON.parse(
    JSON.stringify(value, (_key, one: unknown) =>
      one === null || (Array.isArray(one) && one.length === 0) ? undefined : one,
    ),
  );

describe.each(["US", "metric", "imperial"] as const)("the week in %s units", (system) => {
  it("comes back from the file as the job that went in, to the last digit, and the same file comes of it", async () => {
    const job = weekJob(system);
    const file = await written(job);
    const text = await readBack(file);
    const again = await written(text);
    expect(again).toEqual(file);
    expect(await readBack(again)).toBe(text);

    const { fields = {}, rows = {} } = job;
    const read: unknown = JSON.parse(text);
    // Dates come back as text.
    const serial = (text: string): number => {
      const [, date = "", time = "00:00"] = /^(\d{4}-\d\d-\d\d)(?:T(\d\d:\d\d))?$/.exec(text) ?? [];
      return (Date.parse(`${date}T${time}Z`) - Date.UTC(1899, 11, 30)) / 86_400_000;
    };
    const plain = (value: unknown): unknown =>
      JSON.parse(JSON.stringify(value), (_key, one: unknown) =>
        typeof one === "string" && /^\d{4}-\d\d-\d\d(T|$)/.test(one) ? serial(one) : one,
      );
    for (const [id, value] of Object.entries(fields)) expect(plain(at(at(read, "fields"), id)), id).toBe(value);
    for (const [table, lines = []] of Object.entries(rows))
      expect(essence(plain(at(at(read, "rows"), table))) ?? [], table).toEqual(essence(lines) ?? []);
  });
});

describe("the sample of the invented week, whose values the grid worked out", () => {
  it("is read and written again with every cell as it was", async () => {
    const sample = new Uint8Array(await readFile(path.join(samplesFolder, weekSample)));
    const [before, after] = [partsOf(sample), partsOf(await written(await readBack(sample)))];
    let compared = 0;
    jobLog.sheets.forEach(({ name }, index) => {
      const theirs = cellsOf(before, index + 1);
      const ours = cellsOf(after, index + 1);
      expect([...ours.keys()].sort(), name).toEqual([...theirs.keys()].sort());
      for (const [address, cell] of theirs) {
        const place = `${name} ${address}`;
        const own = ours.get(address);
        expect(at(own, "f"), place).toEqual(at(cell, "f"));
        if (at(cell, "f") === undefined) continue;
        expect(at(own, "@t"), place).toBe(at(cell, "@t"));
        const [value, shown] = [at(own, "v"), at(cell, "v")].map(String);
        // Two programs add up in other orders.
        if (at(cell, "@t") === undefined)
          expect(Math.abs(Number(value) - Number(shown)), place).toBeLessThanOrEqual(
            1e-9 * Math.max(1, Math.abs(Number(shown))),
          );
        else expect(value, place).toBe(shown);
        compared += 1;
      }
    });
    expect(compared).toBeGreaterThan(3000);
  });
});

describe("a written log", () => {
  it("stores a value beside every formula, and no error but the #N/A that leaves a gap in a chart", async () => {
    const job = daysJob("US");
    const parts = partsOf(await written(job));
    let formulas = 0;
    planOf(job).sheets.forEach((sheet, index) => {
      const cells = cellsOf(parts, index + 1);
      for (const cell of sheet.cells) {
        if (cell.kind !== "formula") continue;
        const stored = cells.get(cellAddress(cell.row, cell.column));
        const place = `${sheet.name} ${cellAddress(cell.row, cell.column)}`;
        expect(at(stored, "f"), place).toBeDefined();
        expect(at(stored, "v"), place).toBeDefined();
        if (at(stored, "@t") === "e") expect(at(stored, "v"), place).toBe("#N/A");
        formulas += 1;
      }
    });
    expect(formulas).toBeGreaterThan(1500);
  });

  it("leaves a cell blank that the job clears, and gives the usual where it says nothing", async () => {
    const text = await readBack(await written({ log: 1, system: "US", fields: { usualDrop: null } }));
    const { fields } = JSON.parse(text) as { fields: Record<string, unknown> };
    expect(fields["usualDrop"]).toBeNull();
    expect(fields["meterLimit"]).toBe(0.05);
  });

  it("keeps texts as they are, whatever they look like", async () => {
    const texts = [
      "=1+1",
      "+1",
      "a\nb\tc",
      "  spaces  ",
      "<b>&\"'",
      "_x0041_",
      "_x000D_",
      "é 漢 🧪",
      "#N/A",
      "TRUE",
      "0012",
      "2027-03-01",
      "x".repeat(32_767),
    ];
    const claims = texts.map((loss, index) => ({ claim: `C${String(index)}`, loss }));
    const text = await readBack(await written({ log: 1, system: "US", rows: { claims } }));
    expect(at(at(JSON.parse(text), "rows"), "claims")).toEqual(claims);
  });

  it("takes a moment as text or as a serial number, and keeps one that no text says", async () => {
    const moments = ["2027-03-01T06:50", "2027-03-01 06:50", 46447.284722222226, 46447.123456789, "2027-03-01"];
    const rows = { readings: moments.map((when, index) => ({ id: `R${String(index)}`, when })) };
    const text = await readBack(await written({ log: 1, system: "US", rows }));
    const read = (JSON.parse(text) as { rows: { readings: { when: unknown }[] } }).rows.readings.map(
      ({ when }) => when,
    );
    expect(read.slice(0, 2)).toEqual(["2027-03-01T06:50", "2027-03-01T06:50"]);
    expect(read[3]).toBe(46447.123456789);
    expect(read[4]).toBe("2027-03-01");
  });
});

describe("a job that is not in order is refused, each fault in a sentence with its place", () => {
  const readings = (cells: object): object => ({ log: 1, system: "US", rows: { readings: [{}, cells] } });
  it.each([
    ["not JSON", "{", /^job\.json: The job: not JSON \(.*\)\.$/],
    ["a list", "[]", "job.json: The job: no job in braces."],
    ["without units", { log: 1 }, 'job.json: system: none of "US", "metric", "imperial".'],
    [
      "of a later version",
      { log: 2, system: "US" },
      "job.json: log: not version 1 of the log, which alone this Bathsheet writes.",
    ],
    [
      "with an unknown table",
      { log: 1, system: "US", rows: { reading: [] } },
      'job.json: rows: "reading" is not known; "readings" is the nearest.',
    ],
    ["with an unknown column", readings({ pH: 11 }), 'job.json: Readings, row 2: "pH" is not known.'],
    ["with a computed column", readings({ verdict: "top up" }), 'job.json: Readings, row 2: "verdict" is not known.'],
    ["with words for a number", readings({ ph: "eleven" }), "job.json: Readings, row 2, pH as read: not a number."],
    ["with a number as text", readings({ ph: "11.2" }), "job.json: Readings, row 2, pH as read: not a number."],
    ["with a pH of 0", readings({ ph: 0 }), "job.json: Readings, row 2, pH as read: not a number from 0.1 to 14.5."],
    [
      "with a date that is none",
      readings({ when: "2027-02-30T10:00" }),
      'job.json: Readings, row 2, When: not a date such as "2027-03-01T14:05" from 2000-01-01 on.',
    ],
    [
      "with an empty text",
      readings({ id: "" }),
      "job.json: Readings, row 2, Reading: an empty text; leave the entry out instead.",
    ],
    ["with a key that is a pattern", readings({ bath: "B*" }), undefined],
    [
      "with a word that is none of the list",
      readings({ purpose: "chek" }),
      /^job\.json: Readings, row 2, Purpose: none of "/,
    ],
    [
      "with a prototype",
      '{"log":1,"system":"US","fields":{"__proto__":{"shop":"x"}}}',
      'job.json: fields: "__proto__" is not known.',
    ],
    [
      "with a character that no file holds",
      { log: 1, system: "US", fields: { shop: "a\u0000b" } },
      "job.json: Shop: a text with characters that no workbook can hold.",
    ],
    [
      "with rows that are no list",
      { log: 1, system: "US", rows: { readings: {} } },
      "job.json: Readings: no list of rows.",
    ],
  ])("%s", async (_what, job, sentence) => {
    const text = typeof job === "string" ? job : JSON.stringify(job);
    const { code, out, said, written: files } = await runCommand(["log", "--check", "job.json"], { "job.json": text });
    if (sentence === undefined) {
      expect(code).toBe(0);
      return;
    }
    expect(said).toHaveLength(1);
    if (typeof sentence === "string") expect(said[0]).toBe(sentence);
    else expect(said[0]).toMatch(sentence);
    expect(out).toBe("");
    expect(files.size).toBe(0);
    expect(code).toBe(1);
  });

  it("by the limits of its own units", async () => {
    const job = (system: string): string =>
      JSON.stringify({ log: 1, system, rows: { readings: [{ temperature: 150 }] } });
    expect((await runCommand(["log", "--check", "j"], { j: job("US") })).code).toBe(0);
    const metric = await runCommand(["log", "--check", "j"], { j: job("metric") });
    expect(metric.said).toEqual(["j: Readings, row 1, Sample temp: not a number from 0 to 100."]);
  });
});

describe("a file that is no log of today is refused in one sentence", () => {
  const refused = async (file: Uint8Array): Promise<string> => {
    const { code, out, said } = await runCommand(["read", "job.xlsx", "--json"], { "job.xlsx": file });
    expect(out).toBe("");
    expect(code).toBe(1);
    expect(said).toHaveLength(1);
    const [sentence = ""] = said;
    expect(sentence).toMatch(/^job\.xlsx: /);
    expect(sentence).not.toMatch(/\. [A-Z]/);
    return sentence;
  };

  it("nothing, text, a zip of other things, a foreign workbook", async () => {
    expect(await refused(new Uint8Array())).toBe(
      "job.xlsx: The file is empty; copy or download it again from where it came from.",
    );
    expect(await refused(strToU8("a,b\n1,2\n"))).toContain("This is no Excel workbook");
    expect(await refused(zipSync({ "a.txt": strToU8("a") }))).toContain("no Excel workbook");
    expect(await refused(packed({ sheets: [{ name: "Prices", rows: "" }] }))).toBe(
      "job.xlsx: the workbook is no Bathsheet log.",
    );
  });

  it("a packed bomb", async () => {
    const bomb = zipSync({ "[Content_Types].xml": new Uint8Array(8 << 20) });
    expect(await refused(bomb)).toContain("unpacks to far more than a workbook holds");
  });

  it("an older and a newer log", async () => {
    const file = await written({ log: 1, system: "US" });
    const version = (number: string): Promise<string> => refused(ofVersion(file, number));
    expect(await version("0")).toBe(
      "job.xlsx: the log is of version 0, and version 1 is read here; upgrade it in the add-in first.",
    );
    expect(await version("2")).toContain("this Bathsheet reads none later than version 1");
  });

  it("a damaged log, with table, sheet and row", async () => {
    const file = await written(daysJob("US"));
    const renamed = changed(file, /sharedStrings\.xml$/, (text) => text.replace(">pH as read<", ">acid<"));
    expect(await refused(renamed)).toMatch(
      /the column "pH as read" of table Readings \(sheet Readings, row \d+\) is missing or renamed\.$/,
    );
    const lost = changed(file, /tables\/table\d+\.xml$/, (text) =>
      text.replaceAll('name="Readings"', 'name="Other"').replaceAll('displayName="Readings"', 'displayName="Other"'),
    );
    expect(await refused(lost)).toContain("the table Readings is missing or renamed.");
  });
});

describe("what the log does not take in a cell", () => {
  it("is kept as it is and told with sheet, cell and reason", async () => {
    const file = await written(daysJob("US"));
    const odd = changed(file, /sharedStrings\.xml$/, (text) => text.replaceAll(">check<", ">chekc<"));
    const { code, out, said } = await runCommand(["read", "job.xlsx", "--json"], { "job.xlsx": odd });
    expect(code).toBe(1);
    expect(said.length).toBeGreaterThan(0);
    for (const line of said)
      expect(line).toMatch(/^job\.xlsx, sheet Readings, [A-Z]+\d+: Purpose is "chekc", none of "/);
    expect(out).toContain('"purpose": "chekc"');
  });

  it("an error is left out and told", async () => {
    const file = await written({ log: 1, system: "US", rows: { readings: [{ id: "R1", ph: 11.25 }] } });
    const odd = changed(file, /worksheets\/sheet\d+\.xml$/, (text) =>
      text.replace(/(<c r="[A-Z]+\d+"[^>]*?)>(?:<v>)11\.25<\/v>/, '$1 t="e"><v>#REF!</v>'),
    );
    const { code, out, said } = await runCommand(["read", "job.xlsx", "--json"], { "job.xlsx": odd });
    expect(code).toBe(1);
    expect(said).toHaveLength(1);
    expect(said[0]).toMatch(
      /^job\.xlsx, sheet Readings, [A-Z]+\d+: pH as read shows the error #REF! and is left out\.$/,
    );
    expect(out).not.toContain("#REF!");
  });
});
