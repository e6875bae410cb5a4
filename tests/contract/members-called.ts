/** Notes each member of Excel's API that a piece of work calls on the stand-in's own objects. */

/** A name that no object of Excel's has: the stand-in's refusal of it says what kind of object it is. */
const unheardOf = "memberOfNothing";

function kindOf(face: object): string {
  try {
    Reflect.get(face, unheardOf);
  } catch (error) {
    return new RegExp(`(\\w+)\\.${unheardOf}`).exec(String(error))?.[1] ?? "";
  }
  return "";
}

class Listener {
  /** `Range.values`, or `.list` for a part of what the add-in hands over, as a rule of validation is. */
  readonly called = new Set<string>();
  private readonly known = new WeakMap<object, object>();
  private readonly faces = new WeakMap<object, object>();

  /** The object, or its parts, under an ear that notes what is asked of it. */
  hear(value: unknown): unknown {
    if (typeof value !== "object" || value === null || value instanceof Promise) return value;
    if (Array.isArray(value)) return value.map((one) => this.hear(one));
    const kind = kindOf(value);
    if (kind === "") return value;
    const ear = this.known.get(value) ?? this.wrap(kind, value);
    this.known.set(value, ear);
    this.faces.set(ear, value);
    return ear;
  }

  /** What is handed over, as the stand-in knows it. */
  private given(value: unknown): unknown {
    if (typeof value !== "object" || value === null) return value;
    const face = this.faces.get(value);
    if (face !== undefined) return face;
    if (!Array.isArray(value)) this.noteNames(value);
    return value;
  }

  private noteNames(value: object): void {
    for (const [name, part] of Object.entries(value)) {
      this.called.add(`.${name}`);
      if (typeof part === "object" && part !== null) this.noteNames(part as object);
    }
  }

  private wrap(kind: string, face: object): object {
    // Over an object of its own: of a property that is fixed in the stand-in's, a proxy must give the value itself.
    return new Proxy(Object.create(null) as object, {
      get: (_own, member): unknown => {
        const value: unknown = Reflect.get(face, member);
        if (typeof member === "symbol") return value;
        this.called.add(`${kind}.${member}`);
        if (typeof value !== "function") return this.hear(value);
        return (...handed: readonly unknown[]): unknown => {
          const given = handed.map((one) => this.given(one));
          return this.hear(Reflect.apply(value, face, given));
        };
      },
      set: (_own, member, value): boolean => {
        if (typeof member !== "symbol") this.called.add(`${kind}.${member}`);
        return Reflect.set(face, member, this.given(value));
      },
    });
  }
}

/** From now on `Excel.run` gives out objects that note what is asked of them; the set grows as they are. */
export function listenToExcel(): ReadonlySet<string> {
  const listener = new Listener();
  const { Excel: heard } = globalThis;
  const run = (...given: readonly unknown[]): unknown => {
    const work = given.at(-1) as (context: unknown) => unknown;
    return Reflect.apply(heard.run, heard, [...given.slice(0, -1), (context: unknown) => work(listener.hear(context))]);
  };
  Object.assign(globalThis, { Excel: { ...heard, run } });
  return listener.called;
}
