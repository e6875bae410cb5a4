/** Names that JavaScript itself, promises and test printers ask every object for. */
const askedOfEveryObject = new Set([
  "then",
  "toJSON",
  "constructor",
  "nodeType",
  "tagName",
  "asymmetricMatch",
  "$$typeof",
]);

function noSuchMember(kind: string, member: string): Error {
  return new Error(
    `The workbench's stand-in for Excel has no ${kind}.${member}. Add it to src/workbench/host, or do without.`,
  );
}

function setterOf(object: object, member: string): PropertyDescriptor | undefined {
  for (let at: object | null = object; at !== null; at = Object.getPrototypeOf(at) as object | null) {
    const descriptor = Object.getOwnPropertyDescriptor(at, member);
    if (descriptor !== undefined) return descriptor;
  }
  return undefined;
}

/**
 * The object as it is handed out under its Office.js type. The type promises every member; this guard
 * keeps the promise honest by throwing for each one that the stand-in does not have.
 */
export function guard(kind: string, object: object): unknown {
  // Methods run on the object itself, so that its private fields need no guard.
  const bound = new Map<string | symbol, unknown>();
  const own = (target: object, member: string | symbol): unknown => {
    const value: unknown = Reflect.get(target, member, target);
    if (typeof value !== "function" || member === "constructor") return value;
    if (!bound.has(member)) bound.set(member, value.bind(target));
    return bound.get(member);
  };
  return new Proxy(object, {
    get(target, member): unknown {
      if (typeof member === "symbol" || member in target) return own(target, member);
      if (askedOfEveryObject.has(member)) return undefined;
      throw noSuchMember(kind, member);
    },
    set(target, member, value): boolean {
      if (typeof member === "symbol") return false;
      const descriptor = setterOf(target, member);
      if (descriptor === undefined) throw noSuchMember(kind, member);
      const plainScalar =
        descriptor.writable === true && typeof descriptor.value !== "object" && typeof descriptor.value !== "function";
      if (descriptor.set === undefined && !plainScalar) throw new TypeError(`${kind}.${member} is read-only.`);
      return Reflect.set(target, member, value, target);
    },
  });
}
