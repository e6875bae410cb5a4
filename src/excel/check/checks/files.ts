/** How functions are spelled in files, and whether this Excel hands its file over. */
import { unpack } from "../../../files/unpack.ts";
import { base64 } from "../../base64.ts";
import { handsFileOver, openFile } from "../../open-file.ts";
import { type ExcelCheck, finding, NotTried, sheetPrefix, spelled, wordsOf } from "../excel-check.ts";
import { settledValue } from "../settled-value.ts";
import { smallWorkbook } from "../small-workbook.ts";

const typed = '=BATH.DOSE(29,"1+28")';
const stored = '_xldudf_BATH_DOSE(29,"1+28")';

/** Another value than the function gives, so that one sees whether Excel keeps what a file says. */
const keptValue = 0.5;

/** Argument of the formula by which its cell is found in the file. */
const mark = 29.0625;

function storedFormulas(file: Uint8Array): readonly string[] {
  const sheets = Object.entries(unpack(file)).filter(([name]) => /^xl\/worksheets\/[^/]+\.xml$/.test(name));
  const formula = /<f(?:\s[^>]*)?>([^<]*)<\/f>/g;
  return sheets.flatMap(([, bytes]) =>
    [...new TextDecoder().decode(bytes).matchAll(formula)].map(([, text = ""]) => text.replaceAll("&quot;", '"')),
  );
}

export const fileChecks: readonly ExcelCheck[] = [
  {
    id: "stored-function-when-inserted",
    title: "A function as files spell it, when a file comes in",
    asks: `A sheet from a file whose A1 holds ${stored} with the value ${String(keptValue)} (the function would say 1) is inserted; formula and value at once and when settled.`,
    expected: `${typed}, and ${String(keptValue)} or 1; never #NAME?`,
    run: async ({ context, pause }) => {
      const file = smallWorkbook({ sheet: `${sheetPrefix}file`, formula: stored, value: keptValue });
      const ids = context.workbook.insertWorksheetsFromBase64(base64(file), { positionType: "End" });
      await context.sync();
      const [id = ""] = ids.value;
      const cell = context.workbook.worksheets.getItem(id).getRange("A1").load("formulas,values");
      await context.sync();
      const [formula, atOnce] = [cell.formulas[0]?.[0], cell.values[0]?.[0]] as unknown[];
      await pause(1000);
      const settled = await settledValue({ context, cell, pause });
      cell.load("formulas");
      await context.sync();
      const later: unknown = cell.formulas[0]?.[0];
      return finding(
        later === typed && typeof atOnce === "number" && typeof settled === "number",
        `${String(formula)} with ${spelled(atOnce)}, then ${String(later)} with ${spelled(settled)}`,
      );
    },
  },
  {
    id: "stored-function-when-saved",
    title: "How Excel spells a function in its file",
    asks: `=BATH.DOSE(${String(mark)},"1+28") is written and the workbook taken as a file; the text of the formula in it.`,
    expected: `_xldudf_BATH_DOSE(${String(mark)},"1+28")`,
    run: async ({ context, sheet, pause }) => {
      const cell = sheet.getRange("A1");
      cell.formulas = [[`=BATH.DOSE(${String(mark)},"1+28")`]];
      await context.sync();
      await settledValue({ context, cell, pause });
      const ours = storedFormulas(await openFile()).filter((formula) => formula.includes(String(mark)));
      if (ours.length === 0) throw new NotTried("The file holds no such formula.");
      return finding(String(ours) === `_xldudf_BATH_DOSE(${String(mark)},"1+28")`, ours.join("; "));
    },
  },
  {
    id: "file-handed-over",
    title: "Whether the workbook is handed over as a file",
    asks: "isSetSupported for CompressedFile and File 1.1, then getFileAsync(Compressed) whatever the answer.",
    expected: "Handed over where it is offered, refused where it is not",
    run: async () => {
      const offered = handsFileOver();
      const start = performance.now();
      const handed = await openFile().then(
        ({ length }) => `${String(length)} bytes after ${String(Math.round(performance.now() - start))} ms`,
        (error: unknown) => ({ refusal: wordsOf(error) }),
      );
      const came = typeof handed === "string" ? handed : `nothing: ${handed.refusal}`;
      return finding(offered === (typeof handed === "string"), `${offered ? "offered" : "not offered"}; ${came}`);
    },
  },
];
