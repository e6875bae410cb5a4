/** What went wrong with the workbook, in words for the person at the tank, and what they can do. */
export interface LogProblemText {
  readonly what: string;
  readonly remedy: string;
}

/** A write or read of the log that did not happen. `message` is both sentences together. */
export class LogProblem extends Error implements LogProblemText {
  readonly what: string;
  readonly remedy: string;

  constructor(text: LogProblemText, cause?: unknown) {
    super(`${text.what} ${text.remedy}`, { cause });
    this.name = "LogProblem";
    this.what = text.what;
    this.remedy = text.remedy;
  }
}

/** Excel broke off within a batch, and what it had done of it could not be taken out again for certain. */
export class HalfWritten extends Error {
  readonly sheets: readonly string[];

  constructor(sheets: readonly string[], cause: unknown) {
    super("Half written.", { cause });
    this.sheets = sheets;
  }
}

const nothingWritten = "Nothing was written. Try again.";

const halfWritten = (sheets: readonly string[]): string =>
  `Part of this may be in the log all the same: look at ${sheets.length === 1 ? "the sheet" : "the sheets"} ${sheets.join(" and ")}, undo what is there of it (Ctrl+Z) or correct it by hand. Then try again.`;

const cellBeingEdited: LogProblemText = {
  what: "A cell is being edited, so Excel accepts no entry from the pane.",
  remedy: "Press Enter or Esc in the sheet, then try again.",
};

const protectedSheet: LogProblemText = {
  what: "Excel refused the entry: a sheet of the log is protected or the workbook may not be changed.",
  remedy: "Unprotect the sheet (Review, Unprotect Sheet) or open a copy that you may edit, then try again.",
};

/** Adding sheets is forbidden by another lock than writing into one, and opened elsewhere. */
export const structureProtected: LogProblemText = {
  what: "The structure of this workbook is protected, so no sheet can be added to it. Nothing was changed.",
  remedy: "Unlock it (Review, Protect Workbook), or build the log in a new workbook, then try again.",
};

const someoneElse = (again: string): LogProblemText => ({
  what: "Another person is changing the same part of the workbook.",
  remedy: again,
});

const somethingMissing: LogProblemText = {
  what: "A sheet, table or named cell of the log is missing or has been renamed.",
  remedy: "Undo the renaming (Ctrl+Z), or choose Add what is missing: it leaves your rows alone.",
};

const busy: LogProblemText = { what: "Excel is busy.", remedy: "Wait a moment, then try again." };

const stopped = (again: string): LogProblemText => ({
  what: "Excel stopped before it had answered.",
  remedy: again,
});

const offline = (again: string): LogProblemText => ({
  what: "Excel lost its connection.",
  remedy: `Check the network; what you typed stays here. ${again}`,
});

const answerTooLarge: LogProblemText = {
  what: "The log is larger than Excel hands over in one piece.",
  remedy: "Start a new workbook for the next job week.",
};

/** Excel refuses such a request before it does any of it. */
const requestTooLarge: LogProblemText = {
  what: "This is more than Excel takes in one piece. Nothing was written.",
  remedy: "Take fewer rows at a time.",
};

const tooOld: LogProblemText = {
  what: "This version of Excel lacks something Bathsheet needs.",
  remedy: "Bathsheet needs Excel 2024, Microsoft 365 or Excel on the web.",
};

/** Codes from the Office.js reference, "Error handling with the application-specific JavaScript APIs". */
const byCode: Readonly<Record<string, LogProblemText | ((again: string) => LogProblemText)>> = {
  AccessDenied: protectedSheet,
  AccessDeniedProtected: protectedSheet,
  UnsupportedSheet: protectedSheet,
  InvalidOperationInCellEditMode: cellBeingEdited,
  InsertDeleteConflict: someoneElse,
  MergeConflict: someoneElse,
  EditModeConflict: someoneElse,
  Conflict: someoneElse,
  ItemNotFound: somethingMissing,
  InvalidReference: somethingMissing,
  InvalidBinding: somethingMissing,
  Busy: busy,
  ActivityLimitReached: busy,
  RequestAborted: stopped,
  GeneralException: stopped,
  ServerBusy: busy,
  HostRestartNeeded: busy,
  ConnectionFailure: offline,
  ServiceNotAvailable: offline,
  ResponsePayloadSizeLimitExceeded: answerTooLarge,
  RequestPayloadSizeLimitExceeded: requestTooLarge,
  ApiNotFound: tooOld,
  ApiNotAvailable: tooOld,
  NotImplemented: tooOld,
  UnsupportedOperation: tooOld,
};

/** Excel answers this general code while a cell is in edit mode; only its message tells. */
const editModeWords = /edit(?:ing)? (?:mode|a cell)|cell[- ]edit/i;

const protectedWords = /protect|read-?only/i;

const structureWords = /structure|workbook is protected/i;

/** Known by its shape: the error may come from another window, where `instanceof` fails. */
function officeError(error: unknown): { readonly code: string; readonly message: string } | undefined {
  if (typeof error !== "object" || error === null || !("code" in error) || !("message" in error)) return undefined;
  const { code, message } = error;
  return typeof code === "string" && typeof message === "string" ? { code, message } : undefined;
}

/** The code that Office.js reported, or undefined where the error did not come from Office. */
export function officeCode(error: unknown): string | undefined {
  return officeError(error)?.code;
}

function textFrom(error: unknown, again: string): LogProblemText {
  const office = officeError(error);
  if (office === undefined) {
    const reason =
      typeof error === "object" && error !== null && "message" in error ? String(error.message) : String(error);
    return { what: "Bathsheet ran into a fault of its own.", remedy: `Please report it: ${reason}` };
  }
  if (editModeWords.test(office.message)) return cellBeingEdited;
  if (protectedWords.test(office.message))
    return structureWords.test(office.message) ? structureProtected : protectedSheet;
  const known = byCode[office.code];
  if (known !== undefined) return typeof known === "function" ? known(again) : known;
  return {
    what: `Excel refused (${office.code}).`,
    remedy: `Check that no cell is being edited and no sheet is protected, then try again. Excel says: ${office.message}`,
  };
}

/** Any thrown thing as a LogProblem; one that already is passes through. */
export function problemFrom(error: unknown): LogProblem {
  if (error instanceof LogProblem) return error;
  if (!(error instanceof HalfWritten)) return new LogProblem(textFrom(error, nothingWritten), error);
  const half = halfWritten(error.sheets);
  const { what, remedy } = error.cause instanceof LogProblem ? error.cause : textFrom(error.cause, half);
  return new LogProblem({ what, remedy: remedy.includes(half) ? remedy : `${half} ${remedy}`.trim() }, error.cause);
}

/** Whether Excel refused because somebody is typing into a cell: a look that nobody asked for can wait. */
export const isCellBeingEdited = (error: unknown): boolean => problemFrom(error).what === cellBeingEdited.what;
