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

/** How far the work had come when Excel refused: whether rows were on their way to the log. */
export type Sent = "nothing" | "rows";

/** Excel may stop inside a batch, and then no code of it tells how far it came. */
const tryAgain: Readonly<Record<Sent, string>> = {
  nothing: "Nothing was written. Try again.",
  rows: "Look at the last rows of the log: if the entry is there, whole or in part, undo it (Ctrl+Z). Then try again.",
};

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

const someoneElse = (sent: Sent): LogProblemText => ({
  what: "Another person is changing the same part of the workbook.",
  remedy: tryAgain[sent],
});

const somethingMissing: LogProblemText = {
  what: "A sheet, table or named cell of the log is missing or has been renamed.",
  remedy: "Undo the renaming (Ctrl+Z), or choose Add what is missing: it leaves your rows alone.",
};

const busy: LogProblemText = { what: "Excel is busy.", remedy: "Wait a moment, then try again." };

const stopped = (sent: Sent): LogProblemText => ({
  what: "Excel stopped before it had answered.",
  remedy: tryAgain[sent],
});

const offline = (sent: Sent): LogProblemText => ({
  what: "Excel lost its connection.",
  remedy: `Check the network; what you typed stays here. ${tryAgain[sent]}`,
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
const byCode: Readonly<Record<string, LogProblemText | ((sent: Sent) => LogProblemText)>> = {
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

/** Any thrown thing as a LogProblem; one that already is passes through. */
export function problemFrom(error: unknown, sent: Sent = "nothing"): LogProblem {
  if (error instanceof LogProblem) return error;
  const office = officeError(error);
  if (office === undefined) {
    const reason =
      typeof error === "object" && error !== null && "message" in error ? String(error.message) : String(error);
    return new LogProblem(
      { what: "Bathsheet ran into a fault of its own.", remedy: `Please report it: ${reason}` },
      error,
    );
  }
  if (editModeWords.test(office.message)) return new LogProblem(cellBeingEdited, error);
  if (protectedWords.test(office.message))
    return new LogProblem(structureWords.test(office.message) ? structureProtected : protectedSheet, error);
  const known = byCode[office.code];
  if (known !== undefined) return new LogProblem(typeof known === "function" ? known(sent) : known, error);
  return new LogProblem(
    {
      what: `Excel refused (${office.code}).`,
      remedy: `Check that no cell is being edited and no sheet is protected, then try again. Excel says: ${office.message}`,
    },
    error,
  );
}

/** Whether Excel refused because somebody is typing into a cell: a look that nobody asked for can wait. */
export const isCellBeingEdited = (error: unknown): boolean => problemFrom(error).what === cellBeingEdited.what;
