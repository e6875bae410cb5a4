import { SaxesParser } from "saxes";

import { FileRefused } from "../unpack.ts";

/** An element by its name without a prefix; an attribute with a prefix stands under a colon and its name. */
export interface XmlElement {
  readonly name: string;
  readonly attributes: Readonly<Partial<Record<string, string>>>;
  readonly children: readonly XmlElement[];
  /** What stands directly in it, entities and CDATA resolved. */
  readonly text: string;
}

interface OpenElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: XmlElement[];
  text: string;
}

/** No part of a workbook nests nearly as deep. */
const deepest = 200;

function localName(name: string): string {
  return name.slice(name.indexOf(":") + 1);
}

function localAttributes(given: Readonly<Record<string, string>>): Readonly<Record<string, string>> {
  const names = Object.keys(given);
  // Nearly every element is a cell, whose attributes have no prefix.
  if (!names.some((name) => name.includes(":"))) return given;
  return Object.fromEntries(
    names.map((name) => [name.includes(":") ? name.slice(name.indexOf(":")) : name, given[name] ?? ""]),
  );
}

/**
 * The root of a document. An element that `take` answers true to is not kept in its parent, so that the cells of a long
 * sheet never stand in memory together. Throws FileRefused for a document that declares types or entities of its own,
 * and an Error where it is no whole document.
 */
export function readXml(
  xml: string,
  take: (element: XmlElement, parent: XmlElement) => boolean = () => false,
): XmlElement {
  const open: OpenElement[] = [];
  let root: XmlElement | undefined;
  const parser = new SaxesParser();
  const addText = (text: string): void => {
    const element = open.at(-1);
    if (element !== undefined) element.text += text;
  };
  parser.on("doctype", () => {
    throw new FileRefused(
      "The workbook declares document types of its own, which no program that makes workbooks does, so it was not opened. Save it in Excel as .xlsx and open that copy.",
    );
  });
  parser.on("text", addText);
  parser.on("cdata", addText);
  parser.on("opentag", ({ name, attributes }) => {
    if (open.length > deepest) throw new RangeError("The document nests too deep.");
    open.push({ name: localName(name), attributes: localAttributes(attributes), children: [], text: "" });
  });
  parser.on("closetag", () => {
    const element = open.pop();
    if (element === undefined) return;
    const above = open.at(-1);
    if (above === undefined) root = element;
    else if (!take(element, above)) above.children.push(element);
  });
  parser.write(xml).close();
  if (root === undefined) throw new RangeError("The document is empty.");
  return root;
}

/** The first child at the end of a path of names. */
export function childOf(element: XmlElement | undefined, ...path: readonly string[]): XmlElement | undefined {
  let found = element;
  for (const name of path) found = found?.children.find((child) => child.name === name);
  return found;
}

export function childrenOf(element: XmlElement | undefined, name: string): readonly XmlElement[] {
  return element?.children.filter((child) => child.name === name) ?? [];
}

/** The first element of a name at any depth, the element itself included. */
export function findElement(element: XmlElement | undefined, name: string): XmlElement | undefined {
  if (element === undefined || element.name === name) return element;
  for (const child of element.children) {
    const found = findElement(child, name);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** All text at any depth. */
export function textWithin(element: XmlElement | undefined): string {
  return element === undefined ? "" : element.text + element.children.map(textWithin).join("");
}

/** A switch of the format: "1" and "true" are on. */
export function isOn(value: string | undefined): boolean {
  return value === "1" || value === "true";
}

/** A number of an attribute; undefined where it is missing or none. */
export function numberOf(value: string | undefined): number | undefined {
  if (value === undefined || value.trim() === "") return undefined;
  const number = Number(value);
  return Number.isFinite(number) ? number : undefined;
}
