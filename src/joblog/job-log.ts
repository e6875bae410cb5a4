import type { LogDefinition } from "./model/definition.ts";
import { additionsSheet } from "./sheets/additions/additions-sheet.ts";
import { bathsSheet } from "./sheets/baths/baths-sheet.ts";
import { benchTestsSheet } from "./sheets/bench-tests/bench-tests-sheet.ts";
import { careSheet } from "./sheets/care/care-sheet.ts";
import { chartsSheet } from "./sheets/charts/charts-sheet.ts";
import { costsSheet } from "./sheets/costs/costs-sheet.ts";
import { itemsSheet } from "./sheets/items/items-sheet.ts";
import { jobSheet } from "./sheets/job/job-sheet.ts";
import { journalSheet } from "./sheets/journal/journal-sheet.ts";
import { loadsSheet } from "./sheets/loads/loads-sheet.ts";
import { meterSheet } from "./sheets/meter/meter-sheet.ts";
import { notesSheet } from "./sheets/notes/notes-sheet.ts";
import { readingsSheet } from "./sheets/readings/readings-sheet.ts";
import { releaseSheet } from "./sheets/release/release-sheet.ts";
import { shopSheet } from "./sheets/shop/shop-sheet.ts";
import { claimStatementSheet } from "./sheets/statement/statement-sheet.ts";
import { monthEndSheet } from "./sheets/stock/month-end-sheet.ts";
import { stockSheet } from "./sheets/stock/stock-sheet.ts";
import { whatIfSheet } from "./sheets/what-if/what-if-sheet.ts";

/** The job chemistry log: one workbook for a job week. */
export const jobLog: LogDefinition = {
  version: 1,
  released: {},
  sheets: [
    jobSheet,
    bathsSheet,
    benchTestsSheet,
    readingsSheet,
    additionsSheet,
    loadsSheet,
    itemsSheet,
    meterSheet,
    careSheet,
    stockSheet,
    releaseSheet,
    claimStatementSheet,
    costsSheet,
    monthEndSheet,
    journalSheet,
    chartsSheet,
    whatIfSheet,
    shopSheet,
    notesSheet,
  ],
};
