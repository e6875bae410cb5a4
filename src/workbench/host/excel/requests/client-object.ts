import { ExcelError, itemNotFound } from "../../excel-error.ts";
import type { Workbook } from "../../workbook/workbook.ts";
import { guard } from "./guard.ts";
import { pathsOf } from "./property-paths.ts";
import type { Finding, Promised, Requests } from "./requests.ts";

const targets = new WeakMap<object, () => unknown>();

/** What a proxy stands for, asked when the batch runs; undefined where the object is none of the stand-in's. */
export function targetOf(face: object): (() => unknown) | undefined {
  return targets.get(face);
}

/**
 * A proxy object as Office.js makes them: nothing happens until `sync`, reading what was not loaded
 * throws, a missing thing fails the batch or becomes a null object.
 */
export abstract class ClientObject<Target, Face extends object> {
  protected readonly requests: Requests;
  protected readonly kind: string;
  readonly face: Face;
  private readonly what: string;
  private readonly loadedValues = new Map<string, unknown>();
  private readonly parts = new Map<string, unknown>();
  private target: Target | undefined;
  private state: "waiting" | "found" | "null" = "waiting";

  constructor(requests: Requests, kind: string, { find, orNull = (): boolean => false, what }: Finding<Target>) {
    this.requests = requests;
    this.kind = kind;
    this.what = what;
    this.face = guard(kind, this) as Face;
    targets.set(this.face, () => this.live());
    requests.enqueue("look", kind, () => {
      const target = find(requests.workbookNow);
      if (target === undefined && !orNull()) throw itemNotFound(`There is no ${what}.`, kind);
      this.target = target;
      this.state = target === undefined ? "null" : "found";
    });
  }

  get context(): Excel.RequestContext {
    return this.requests.face;
  }

  get isNullObject(): boolean {
    if (this.state === "waiting") throw this.notLoaded("isNullObject");
    return this.state === "null";
  }

  /** Names of the scalar properties that `load` may fetch. */
  protected abstract readonly scalars: readonly string[];

  /** Value of a scalar property at the moment of the read. */
  protected abstract fetch(property: string, target: Target, workbook: Workbook): unknown;

  /** The thing itself; only while the batch runs. A null object has none. */
  live(): Target {
    if (this.target === undefined) throw itemNotFound(`There is no ${this.what}.`, this.kind);
    return this.target;
  }

  /** The thing itself, or undefined for a null object; only while the batch runs. */
  liveOrNull(): Target | undefined {
    return this.state === "waiting" ? this.live() : this.target;
  }

  /** A proxy for a part of this thing, the same one each time. */
  protected part<Part>(name: string, make: () => Part): Part {
    if (!this.parts.has(name)) this.parts.set(name, make());
    return this.parts.get(name) as Part;
  }

  private notLoaded(property: string): ExcelError {
    const message = `The property '${property}' is not available. Before reading the property's value, call the load method on the containing object and call "context.sync()" on the associated request context.`;
    return new ExcelError("PropertyNotLoaded", message, `${this.kind}.${property}`);
  }

  protected loadedValue(property: string): unknown {
    if (!this.loadedValues.has(property)) throw this.notLoaded(property);
    return this.loadedValues.get(property);
  }

  /** Queues a change; where it sets a property, the value can be read back at once, as in Office.js. */
  protected change(member: string, act: (target: Target, workbook: Workbook) => void, value?: unknown): void {
    if (value !== undefined) this.loadedValues.set(member, value);
    const run = (): void => {
      act(this.live(), this.requests.workbookNow);
    };
    this.requests.enqueue("change", `${this.kind}.${member}`, run, value);
  }

  /** A value that a method promises, filled in at sync. */
  protected result<Value>(member: string, compute: (target: Target, workbook: Workbook) => Value): Promised<Value> {
    let settled: { readonly value: Value } | undefined;
    this.requests.enqueue("read", `${this.kind}.${member}`, () => {
      settled = { value: compute(this.live(), this.requests.workbookNow) };
    });
    const notYet = (): ExcelError =>
      new ExcelError(
        "ValueNotLoaded",
        `The value of the result object has not been loaded yet. Call "context.sync()" before reading it.`,
        `${this.kind}.${member}`,
      );
    return {
      get value(): Value {
        if (settled === undefined) throw notYet();
        return settled.value;
      },
    };
  }

  load(properties?: string | string[] | object): Face {
    for (const path of pathsOf(properties) ?? this.scalars) this.loadPath(path);
    return this.face;
  }

  protected loadPath(path: string): void {
    const [first = "", ...rest] = path.split("/");
    if (rest.length > 0) {
      const part = (this.face as Record<string, unknown>)[first] as { load: (path: string) => unknown };
      part.load(rest.join("/"));
      return;
    }
    if (!this.scalars.includes(first))
      throw new Error(
        `The workbench's stand-in for Excel cannot load ${this.kind}.${first}. Add it to src/workbench/host, or do without.`,
      );
    this.requests.enqueue("read", `${this.kind}.load`, () => {
      const target = this.liveOrNull();
      if (target === undefined) return;
      const value = this.fetch(first, target, this.requests.workbookNow);
      this.requests.brought(value);
      this.loadedValues.set(first, value);
    });
  }
}

/** A proxy for something that its parent holds; null when the parent is. */
export function partOf<Parent, Target>(
  parent: ClientObject<Parent, object>,
  what: string,
  find: (target: Parent, workbook: Workbook) => Target | undefined,
): Finding<Target> {
  return {
    what,
    orNull: () => parent.liveOrNull() === undefined,
    find: (workbook) => {
      const target = parent.liveOrNull();
      return target === undefined ? undefined : find(target, workbook);
    },
  };
}
