import { SaxesParser } from "saxes";

type Place = readonly [from: number, to: number];

/** An element whose end was read. Elements of another vocabulary than the document's root bear no name. */
export interface ReadElement {
  readonly name: string;
  readonly parent: string;
  readonly attributes: Readonly<Partial<Record<string, string>>>;
  /** What stands directly in it, entities and CDATA resolved. */
  readonly text: string;
  readonly children: readonly { readonly name: string; readonly text: string }[];
}

/** What goes of an element: all of it, an attribute, or nothing. */
export type Cut = "element" | { readonly attribute: string } | undefined;

interface OpenElement {
  name: string;
  readonly from: number;
  readonly attributes: Record<string, string>;
  readonly places: Map<string, Place>;
  text: string;
  readonly children: { readonly name: string; readonly text: string }[];
}

/** From the blank before an attribute to its closing quote at `to`; a value cannot hold the quote around it. */
function attributePlace(xml: string, to: number): Place {
  const opening = xml.lastIndexOf(xml.charAt(to - 1), to - 2);
  const before = xml.slice(xml.lastIndexOf("<", opening), opening);
  return [opening - (/\s+[^\s=]+\s*=\s*$/.exec(before)?.[0].length ?? 0), to];
}

function without(xml: string, places: readonly Place[]): string {
  let kept = "";
  let at = 0;
  for (const [from, to] of [...places].sort(([first], [second]) => first - second)) {
    if (from < at) continue;
    kept += xml.slice(at, from);
    at = to;
  }
  return kept + xml.slice(at);
}

/**
 * The document without what `cutOf` says of each element, and otherwise character for character as it was: the parser
 * only tells where things stand. Throws where it is no whole document.
 */
export function cutElements(xml: string, cutOf: (element: ReadElement) => Cut): string {
  const cuts: Place[] = [];
  const open: OpenElement[] = [];
  let vocabulary: string | undefined;
  const parser = new SaxesParser({ xmlns: true });
  const addText = (text: string): void => {
    const element = open.at(-1);
    if (element !== undefined) element.text += text;
  };
  parser.on("text", addText);
  parser.on("cdata", addText);
  parser.on("opentagstart", () => {
    open.push({
      name: "",
      from: xml.lastIndexOf("<", parser.position - 1),
      attributes: {},
      places: new Map(),
      text: "",
      children: [],
    });
  });
  parser.on("attribute", ({ name, value }) => {
    const element = open.at(-1);
    if (element === undefined) return;
    element.attributes[name] = value;
    element.places.set(name, attributePlace(xml, parser.position));
  });
  parser.on("opentag", ({ local, uri }) => {
    vocabulary ??= uri;
    const element = open.at(-1);
    if (element !== undefined && uri === vocabulary) element.name = local;
  });
  parser.on("closetag", () => {
    const element = open.pop();
    if (element === undefined) return;
    const { name, attributes, text, children, from, places } = element;
    const above = open.at(-1);
    // Who has children of children is no cell: a long sheet's rows need not be held.
    if (children.length === 0) above?.children.push({ name, text });
    const cut = name === "" ? undefined : cutOf({ name, parent: above?.name ?? "", attributes, text, children });
    const place =
      cut === "element"
        ? ([from, parser.position] as const)
        : cut === undefined
          ? undefined
          : places.get(cut.attribute);
    if (place !== undefined) cuts.push(place);
  });
  parser.write(xml).close();
  return without(xml, cuts);
}
