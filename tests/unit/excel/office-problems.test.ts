import { describe, expect, test } from "vitest";

import { HalfWritten, LogProblem, problemFrom } from "../../../src/excel/office-problems.ts";

/** As Office.js throws it, and as it looks when it comes from another window. */
const office = (code: string, message = ""): unknown => ({ code, message, debugInfo: { code, message } });

describe("what Office reports", () => {
  test.each([
    ["AccessDenied", /protected/, /Unprotect/],
    ["AccessDeniedProtected", /protected/, /Unprotect/],
    ["InvalidOperationInCellEditMode", /cell is being edited/, /Enter or Esc/],
    ["ItemNotFound", /missing or has been renamed/, /Undo/],
    ["InvalidReference", /missing or has been renamed/, /leaves your rows alone/],
    ["ServiceNotAvailable", /lost its connection/, /what you typed stays here/],
    ["Busy", /Excel is busy/, /Wait a moment/],
    ["ResponsePayloadSizeLimitExceeded", /larger than Excel hands over/, /new workbook/],
    ["RequestPayloadSizeLimitExceeded", /more than Excel takes in one piece. Nothing was written/, /fewer rows/],
    ["ApiNotFound", /version of Excel/, /needs Excel/],
  ])("%s becomes a sentence and what to do", (code, what, remedy) => {
    const problem = problemFrom(office(code));
    expect(problem.what).toMatch(what);
    expect(problem.remedy).toMatch(remedy);
  });

  test.each([
    ["InsertDeleteConflict", /Another person/],
    ["MergeConflict", /Another person/],
    ["EditModeConflict", /Another person/],
    ["ConnectionFailure", /lost its connection/],
    ["RequestAborted", /stopped before/],
    ["GeneralException", /stopped before/],
  ])("%s says that nothing was written, unless a part of it could not be taken out again", (code, what) => {
    const [half, none] = [problemFrom(new HalfWritten(["Readings"], office(code))), problemFrom(office(code))];
    expect([half.what, none.what]).toEqual([expect.stringMatching(what), expect.stringMatching(what)]);
    expect(half.remedy).toMatch(/look at the sheet Readings, undo what is there.*try again/);
    expect(half.remedy).not.toMatch(/Nothing was written/);
    expect(none.remedy).toMatch(/Nothing was written. Try again/);
    expect(none.remedy).not.toMatch(/look at/);
  });

  test.each([
    "AccessDenied",
    "InvalidArgument",
    "InternalError",
    "Busy",
    "Conflict",
    "ItemNotFound",
    "GeneralException",
  ])("%s tells of a part that stays in the log, with its sheets", (code) => {
    const { what, remedy } = problemFrom(new HalfWritten(["Readings", "Claims"], office(code)));
    expect(what).toBe(problemFrom(office(code)).what);
    expect(remedy.match(/Part of this may be in the log all the same/g)).toHaveLength(1);
    expect(remedy).toMatch(/the sheets Readings and Claims/);
  });

  test("a protected structure is told from a protected sheet by Excel's words", () => {
    const structure = problemFrom(office("AccessDenied", "The workbook's structure is protected."));
    expect(structure.remedy).toMatch(/Review, Protect Workbook/);
    expect(problemFrom(office("AccessDenied", "The sheet is protected.")).remedy).toMatch(/Unprotect Sheet/);
  });

  test("cell editing is known by its words where the code is a general one", () => {
    expect(problemFrom(office("InvalidOperation", "Excel is in cell-editing mode.")).remedy).toMatch(/Enter or Esc/);
  });

  test("a workbook for reading only and a protected one are known by their words where the code is a general one", () => {
    expect(problemFrom(office("InvalidOperation", "The workbook is read-only.")).remedy).toMatch(
      /open a copy that you may edit/,
    );
    expect(problemFrom(office("GeneralException", "The cell is on a protected sheet.")).remedy).toMatch(/Unprotect/);
  });

  test("an unknown code keeps Excel's own words", () => {
    expect(problemFrom(office("SomethingNew", "The moon is full.")).message).toMatch(/SomethingNew.*The moon is full/);
  });

  test("a problem that is known already passes through", () => {
    const problem = new LogProblem({ what: "a", remedy: "b" });
    expect(problemFrom(problem)).toBe(problem);
  });

  test("a fault of our own says so and how it is called", () => {
    expect(problemFrom(new TypeError("x is undefined")).message).toMatch(/fault of its own.*x is undefined/);
  });
});
