import { strToU8, zipSync } from "fflate";
import { beforeAll, describe, expect, it } from "vitest";

import { logIn, typedBookOf } from "../../../src/command-line/job/log-in-book.ts";
import { writeLog } from "../../../src/command-line/job/write-log.ts";
import { gather } from "../../../src/command-line/rollup/gather.ts";
import { scanBook } from "../../../src/command-line/scan/scan-book.ts";
import { readWorkbook } from "../../../src/files/read/read-workbook.ts";
import { zipDirectory } from "../../../src/files/zip-directory.ts";
import { packed } from "../files/read/packed.ts";
import { changed, ofVersion } from "./changed-log.ts";
import { runCommand } from "./run-command.ts";
import { smallJob } from "./small-job.ts";

/** An old container that names the stream of a workbook with a password (Microsoft, MS-OFFCRYPTO 2.3.4.4). */
const encrypted = new Uint8Array([
  ...[0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1],
  ...Array.from("EncryptedPackage", (letter) => [letter.charCodeAt(0), 0]).flat(),
]);

let log: Uint8Array;
let file: (shop: string) => Uint8Array;

beforeAll(async () => {
  log = await writeLog(smallJob);
  file = (shop) => changed(log, /sharedStrings\.xml$/, (text) => text.replace(">Small Works<", `>${shop}<`));
});

const command = ["rollup", "logs", "--parquet", "rows"];

describe("a folder with hostile files", () => {
  it("has each named in a sentence and skipped, and the rest counted", async () => {
    const files = {
      "logs/a-good.xlsx": log,
      "logs/bomb.xlsx": zipSync({ "[Content_Types].xml": new Uint8Array(8 << 20) }),
      "logs/cut.xlsx": log.slice(0, Math.floor(log.length * 0.7)),
      "logs/encrypted.xlsx": encrypted,
      "logs/foreign.xlsx": packed({ sheets: [{ name: "Prices", rows: "" }] }),
      "logs/from-1904.xlsx": changed(file("Works of 1904"), /xl\/workbook\.xml$/, (text) =>
        text.replace(/<workbookPr/, '<workbookPr date1904="1"'),
      ),
      "logs/older.xlsx": ofVersion(log, "0"),
      "logs/renamed.xlsx": strToU8("%PDF-1.7"),
      "logs/sheets-renamed.xlsx": changed(file("Other Works"), /xl\/workbook\.xml$/, (text) =>
        text.replaceAll("Loads", "Washed").replaceAll('"Job"', '"Ticket"').replaceAll("Job!", "Ticket!"),
      ),
      "logs/words.xlsx": changed(file("Third Works"), /worksheets\/sheet\d+\.xml$/, (text) =>
        text.replace(/(<c r="E\d+"[^>]*>)<v>3<\/v>/, "$1<v>-3</v>"),
      ),
    };
    const { code, out, said, written } = await runCommand(command, files);
    expect(code).toBe(1);
    expect(out).toMatch(/^4 logs added up, 6 files left out, \d+ exceptions\.\n$/);
    const whole = said.filter((line) => /^[\w-]+\.xlsx: /.test(line));
    expect(whole.map((line) => line.split(".xlsx: ")[0])).toEqual([
      "bomb",
      "cut",
      "encrypted",
      "foreign",
      "older",
      "renamed",
    ]);
    for (const [line, words] of [
      [whole[0], /unpacks to far more than a workbook holds/],
      [whole[1], /damaged or was cut short/],
      [whole[2], /locked with a password/],
      [whole[3], /no Bathsheet log/],
      [whole[4], /of version 0.*upgrade it in the add-in first/],
      [whole[5], /no Excel workbook/],
    ] as const) {
      expect(line).toMatch(words);
      expect(line).not.toMatch(/\. [A-Z]/);
    }
    expect(said).toContainEqual(expect.stringMatching(/^words\.xlsx, Loads, row \d+: Baskets is -3, not a number/));
    const folders = [...written.keys()].filter((name) => name.startsWith("rows/loads/"));
    expect(folders).toEqual([
      "rows/loads/shop=Other Works/month=2027-03/rows.parquet",
      "rows/loads/shop=Small Works/month=2027-03/rows.parquet",
      "rows/loads/shop=Third Works/month=2027-03/rows.parquet",
      // 1,462 days lie between the two first days: 1 March 2027 there is 2 March 2031 here.
      "rows/loads/shop=Works of 1904/month=2031-03/rows.parquet",
    ]);
  });

  it("packs rows in portions once many are in memory, and leaves none out", async () => {
    const logs = new Map(["First Works", "Other Works"].map((shop) => [`logs/${shop}.xlsx`, file(shop)]));
    const rowsAtOnce = async (count: number | undefined): Promise<readonly string[]> => {
      const { files } = await gather(
        "logs",
        () => false,
        () => undefined,
        {
          listFiles: () => Promise.resolve([...logs.keys()]),
          readFile: (name) => Promise.resolve(logs.get(name) ?? new Uint8Array()),
          progress: () => undefined,
          requireGoingOn: () => Promise.resolve(),
        },
        count,
      );
      return files.map((one) => one.path);
    };
    const whole = await rowsAtOnce(undefined);
    const inPortions = await rowsAtOnce(1);
    expect(whole.every((name) => name.endsWith("/rows.parquet"))).toBe(true);
    expect(inPortions).toEqual(
      whole.map((name) => (name.includes("Other Works") ? name.replace("rows.parquet", "rows-2.parquet") : name)),
    );
  });

  it("writes nothing once it is cancelled, at whatever step", async () => {
    for (const goOn of [0, 1, 2]) {
      const { code, out, said, written } = await runCommand(command, { "logs/good.xlsx": log }, goOn);
      expect([code, out, said, written.size], String(goOn)).toEqual([130, "", ["Cancelled; nothing was written."], 0]);
    }
    expect((await runCommand(command, { "logs/good.xlsx": log }, 3)).code).toBe(0);
  });
});

describe("scanning a log", () => {
  const whole = (bytes: Uint8Array): unknown => logIn(typedBookOf(readWorkbook(bytes, [])));

  it.each([
    ["as it is written", /workbook\.xml$/, (text: string) => `${text}\n`],
    [
      "with entities and other letters",
      /sharedStrings\.xml$/,
      (text: string) => text.replace("kitchen fire", "fen&#234;tre &amp; _x0041_ ü 火"),
    ],
    [
      "with runs of looks",
      /sharedStrings\.xml$/,
      (text: string) =>
        text.replace(
          /<t[^>]*>kitchen fire<\/t>/,
          '<r><t>kitchen</t></r><r><rPr><b/></rPr><t xml:space="preserve"> fire</t></r>',
        ),
    ],
    [
      "with a text in the cell",
      /sheet\d+\.xml$/,
      (text: string) =>
        text.replace(/(<c r="\w+")([^>]*) t="s"><v>\d+<\/v>/, '$1$2 t="inlineStr"><is><t>Büro</t></is>'),
    ],
    [
      "with a formula and its value where a person types",
      /sheet\d+\.xml$/,
      (text: string) => text.replace(/(<c r="E\d+"[^>]*>)<v>5<\/v>/, "$1<f>2+3</f><v>5</v>"),
    ],
    [
      "with an error where a person types",
      /sheet\d+\.xml$/,
      (text: string) => text.replace(/(<c r="E\d+"[^>]*)><v>5<\/v>/, '$1 t="e"><f>1/0</f><v>#DIV/0!</v>'),
    ],
  ] as const)("gives what reading it whole gives: %s", (_what, part, change) => {
    const bytes = changed(log, part, change);
    const scanned = scanBook(bytes);
    expect(scanned).toBeDefined();
    if (scanned !== undefined) expect(logIn(scanned)).toEqual(whole(bytes));
  });

  it.each([
    ["comments", /sheet4\.xml$/, (text: string) => text.replace("<sheetData>", "<!-- here --><sheetData>")],
    ["a prefix", /sheet4\.xml$/, (text: string) => text.replaceAll("<c ", "<x:c ").replaceAll("</c>", "</x:c>")],
    [
      "rows out of their order",
      /sheet4\.xml$/,
      (text: string) => text.replace(/(<row .*?<\/row>)(<row .*?<\/row>)/s, "$2$1"),
    ],
    ["types of its own", /workbook\.xml$/, (text: string) => text.replace("<workbook", "<!DOCTYPE workbook><workbook")],
    ["an end too early", /sheet4\.xml$/, (text: string) => text.slice(0, -40)],
    ["days from 1904", /xl\/workbook\.xml$/, (text: string) => text.replace("<workbookPr", '<workbookPr date1904="1"')],
    ["macros", /Content_Types/, (text: string) => `${text}<!-- macroEnabled -->`],
  ] as const)("leaves what it does not know to reading it whole: %s", (_what, part, change) => {
    expect(scanBook(changed(log, part, change))).toBeUndefined();
  });

  it("leaves a part that is not what was packed to reading it whole", () => {
    const bytes = log.slice();
    const sheet = zipDirectory(bytes).find(({ name }) => name === "xl/worksheets/sheet4.xml");
    const at = (sheet?.at ?? 0) + 500;
    bytes[at] = (bytes[at] ?? 0) ^ 0x55;
    expect(scanBook(bytes)).toBeUndefined();
  });
});
