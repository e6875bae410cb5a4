export interface FieldProblem {
  readonly key: string;
  readonly message: string;
}

/** Values of a form's fields that could be read, by the keys that the form has; a blank or unreadable field is undefined. */
export interface FilledFields<Key extends string> {
  readonly number: (key: Key) => number | undefined;
  readonly text: (key: Key) => string | undefined;
}
