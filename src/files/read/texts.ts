import { childOf, childrenOf, type XmlElement } from "./xml-tree.ts";

/** Characters that XML cannot hold stand in files as _x000D_, and such a text itself as _x005F_x000D_ (ECMA-376, 22.9.2.19). */
export function unescaped(text: string): string {
  return text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, digits: string) => String.fromCharCode(Number.parseInt(digits, 16)));
}

/** A text whole, or in runs of their own looks; how it is pronounced does not belong to it. */
export function richText(element: XmlElement | undefined): string {
  const runs = childrenOf(element, "r").map((run) => childOf(run, "t")?.text ?? "");
  return unescaped([childOf(element, "t")?.text ?? "", ...runs].join(""));
}

/** Whether a text wears several looks. */
export function hasRuns(element: XmlElement | undefined): boolean {
  return childrenOf(element, "r").length > 1;
}
