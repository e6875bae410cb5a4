export interface FieldProblem {
  readonly key: string;
  readonly message: string;
}

/** Values that could be read; a blank or unreadable field is undefined. */
export interface FilledFields {
  readonly number: (key: string) => number | undefined;
  readonly text: (key: string) => string | undefined;
}
