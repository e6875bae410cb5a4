/** `"a, b/c"`, `["a","b"]` or `{ a: true, b: { c: true } }` as paths; undefined for a bare `load()`. */
export function pathsOf(properties: string | string[] | object | undefined): readonly string[] | undefined {
  if (properties === undefined) return undefined;
  if (typeof properties === "string")
    return properties
      .split(",")
      .map((path) => path.trim())
      .filter((path) => path !== "");
  if (Array.isArray(properties)) return (properties as readonly string[]).flatMap((path) => pathsOf(path) ?? []);
  return Object.entries(properties as Record<string, unknown>).flatMap(([name, wanted]) =>
    typeof wanted === "object" && wanted !== null
      ? (pathsOf(wanted) ?? []).map((path) => `${name}/${path}`)
      : wanted === true
        ? [name]
        : [],
  );
}
