import { additionsSheet } from "./additions-sheet.ts";
import { bathsSheet } from "./baths-sheet.ts";
import { benchTestsSheet } from "./bench-tests-sheet.ts";
import { careSheet } from "./care-sheet.ts";
import { chartsSheet } from "./charts-sheet.ts";
import { costsSheet } from "./costs-sheet.ts";
import type { LogDefinition } from "./definition.ts";
import { itemsSheet } from "./items-sheet.ts";
import { jobSheet } from "./job-sheet.ts";
import { loadsSheet } from "./loads-sheet.ts";
import { meterSheet } from "./meter-sheet.ts";
import { monthEndSheet } from "./month-end-sheet.ts";
import { notesSheet } from "./notes-sheet.ts";
import { readingsSheet } from "./readings-sheet.ts";
import { releaseSheet } from "./release-sheet.ts";
import { shopSheet } from "./shop-sheet.ts";
import { claimStatementSheet } from "./statement-sheet.ts";
import { stockSheet } from "./stock-sheet.ts";
import { whatIfSheet } from "./what-if-sheet.ts";

/** The job chemistry log: one workbook for a job week. */
export const jobLog: LogDefinition = {
  version: 1,
  released: {},
  sheets: [jobSheet, bathsSheet, benchTestsSheet, readingsSheet, additionsSheet, chartsSheet, loadsSheet, itemsSheet, meterSheet, careSheet, stockSheet, monthEndSheet, releaseSheet, costsSheet, claimStatementSheet, whatIfSheet, shopSheet, notesSheet],
};
