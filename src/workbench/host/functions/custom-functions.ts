import type { FunctionMetadata, FunctionsMetadata } from "./metadata.ts";

/** Error words by the names of CustomFunctions.ErrorCode. */
export const errorCodes = {
  invalidValue: "#VALUE!",
  notAvailable: "#N/A",
  divisionByZero: "#DIV/0!",
  invalidNumber: "#NUM!",
  nullReference: "#NULL!",
  invalidName: "#NAME?",
  invalidReference: "#REF!",
} as const;

/** Stands for CustomFunctions.Error: the code becomes the cell's error, the message its tooltip. */
export class CustomFunctionError extends Error {
  readonly code: string;

  constructor(code: string, message?: string) {
    super(message ?? "");
    this.name = "CustomFunctions.Error";
    this.code = code;
  }
}

export type CustomFunction = (...args: unknown[]) => unknown;

/** The functions of the add-in: what functions.json says of them and the code that was associated. */
export class FunctionBook {
  private readonly metadata = new Map<string, FunctionMetadata>();
  private readonly code = new Map<string, CustomFunction>();
  private readonly onNewCode: () => void;

  constructor(onNewCode: () => void) {
    this.onNewCode = onNewCode;
  }

  describe(metadata: FunctionsMetadata): void {
    for (const one of metadata.functions) this.metadata.set(one.id.toUpperCase(), one);
  }

  associate(id: string, code: CustomFunction): void {
    this.code.set(id.toUpperCase(), code);
    this.onNewCode();
  }

  metadataOf(id: string): FunctionMetadata | undefined {
    return this.metadata.get(id.toUpperCase());
  }

  codeOf(id: string): CustomFunction | undefined {
    return this.code.get(id.toUpperCase());
  }

  associated(): readonly string[] {
    return [...this.code.keys()];
  }
}
