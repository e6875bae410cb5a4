/** Codes of Office.js that the stand-in raises. */
export type ErrorCode =
  | "AccessDenied"
  | "GeneralException"
  | "InvalidArgument"
  | "InvalidOperation"
  | "InvalidOperationInCellEditMode"
  | "InvalidReference"
  | "ItemAlreadyExists"
  | "ItemNotFound"
  | "NotImplemented"
  | "PropertyNotLoaded"
  | "RequestPayloadSizeLimitExceeded"
  | "ResponsePayloadSizeLimitExceeded"
  | "ValueNotLoaded";

/** What a failed sync rejects with; stands for OfficeExtension.Error. */
export class ExcelError extends Error {
  readonly code: ErrorCode;
  readonly debugInfo: { code: string; message: string; errorLocation: string };
  readonly traceMessages: string[] = [];
  readonly innerError = null;

  constructor(code: ErrorCode, message: string, errorLocation = "") {
    super(message);
    this.name = "RichApi.Error";
    this.code = code;
    this.debugInfo = { code, message, errorLocation };
  }
}

export function invalidArgument(message: string, location = ""): ExcelError {
  return new ExcelError(
    "InvalidArgument",
    `The argument is invalid or missing or has an incorrect format. ${message}`,
    location,
  );
}

export function itemNotFound(what: string, location = ""): ExcelError {
  return new ExcelError("ItemNotFound", `The requested resource doesn't exist. ${what}`, location);
}
