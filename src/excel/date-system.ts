import { LogProblem } from "./office-problems.ts";

/**
 * Refuses a workbook that counts its days from 1904: every date that the log writes would show four years and a day
 * late there. DATE answers by the workbook's own system, and 1 January 1904 is day 0 of that one. A host that does not
 * calculate for add-ins is taken to count from 1900, as Excel does unless it is told otherwise.
 */
export async function refuseDatesFrom1904(): Promise<void> {
  const first = await Excel.run(async (context) => {
    const answer = context.workbook.functions.date(1904, 1, 1).load("value");
    await context.sync();
    return answer.value;
  }).catch(() => undefined);
  if (first !== 0) return;
  throw new LogProblem({
    what: "This workbook counts its dates from 1904, where the log counts from 1900. Nothing was written.",
    remedy:
      "Clear File, Options, Advanced, Use 1904 date system (on a Mac: Preferences, Calculation), or start the log in a new workbook.",
  });
}
