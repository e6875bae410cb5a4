/** What Microsoft's object model sends to Excel and takes back, as far as the judge reads it. */

/** Kinds of action, by the numbers that go over the wire. */
export const actionKinds = { make: 1, query: 2, call: 3, set: 4 } as const;

/** Kinds of path to an object, by the numbers that go over the wire. */
export const pathKinds = { root: 1, made: 2, method: 3, property: 4, item: 5, reference: 6 } as const;

interface WireArguments {
  readonly Arguments?: readonly unknown[];
  /** Beside each argument the path of the object that it stands for, 0 for a plain value. */
  readonly ReferencedObjectPathIds?: readonly unknown[];
}

export interface WireAction {
  readonly Id: number;
  readonly ActionType: number;
  readonly Name: string;
  readonly ObjectPathId: number;
  readonly ArgumentInfo?: WireArguments;
  readonly QueryInfo?: { readonly Select?: readonly string[] };
}

export interface WirePath {
  readonly Id: number;
  readonly ObjectPathType: number;
  readonly Name: string;
  readonly ParentObjectPathId?: number;
  readonly ArgumentInfo?: WireArguments;
}

export interface WireBody {
  readonly Actions: readonly WireAction[];
  readonly ObjectPaths: Readonly<Record<string, WirePath>>;
}

interface WireResult {
  readonly ActionId: number;
  readonly Value: unknown;
}

export interface WireAnswer {
  readonly Body: { readonly Results: readonly WireResult[]; readonly Error?: object };
}

/** What the library asks for an answer. */
export interface Executor {
  executeAsync(customData: unknown, flags: number, message: { readonly Body: WireBody }): Promise<WireAnswer>;
}
