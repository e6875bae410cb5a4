/** The part of functions.json that the host uses; Microsoft's schema for custom functions. */
export interface ParameterMetadata {
  readonly name: string;
  readonly description?: string;
  readonly type?: string;
  readonly dimensionality?: string;
  readonly optional?: boolean;
  readonly repeating?: boolean;
  /** The list of words that is offered while the argument is typed. */
  readonly customEnumId?: string;
}

export interface EnumMetadata {
  readonly id: string;
  readonly type: "string";
  readonly values: readonly { readonly name: string; readonly stringValue: string; readonly tooltip: string }[];
}

export interface FunctionMetadata {
  readonly id: string;
  readonly name: string;
  readonly description?: string;
  readonly helpUrl?: string;
  readonly parameters: readonly ParameterMetadata[];
  readonly result?: { readonly type?: string; readonly dimensionality?: string };
}

export interface FunctionsMetadata {
  readonly functions: readonly FunctionMetadata[];
  readonly enums?: readonly EnumMetadata[];
}
