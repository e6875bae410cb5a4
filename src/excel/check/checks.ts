/** All checks, in the order of the report. */
import { argumentChecks } from "./checks/arguments.ts";
import { calculationChecks } from "./checks/calculation.ts";
import { chartChecks } from "./checks/charts.ts";
import { eventChecks } from "./checks/events.ts";
import { fileChecks } from "./checks/files.ts";
import { grownTableChecks } from "./checks/grown-table.ts";
import { oneValueChecks } from "./checks/one-value.ts";
import { protectionChecks } from "./checks/protection.ts";
import { spellingChecks } from "./checks/spelling.ts";
import { wholeLogChecks } from "./checks/whole-log.ts";
import { habitChecks } from "./checks/workbook-habits.ts";
import type { ExcelCheck } from "./excel-check.ts";

export const excelChecks: readonly ExcelCheck[] = [
  ...oneValueChecks,
  ...spellingChecks,
  ...grownTableChecks,
  ...argumentChecks,
  ...calculationChecks,
  ...eventChecks,
  ...fileChecks,
  ...chartChecks,
  ...protectionChecks,
  ...habitChecks,
  ...wholeLogChecks,
];
