import { strFromU8, type Unzipped } from "fflate";

import { FileRefused } from "../unpack.ts";
import { childrenOf, readXml, type XmlElement } from "./xml-tree.ts";

/** A part that another points to. */
export interface Relation {
  readonly id: string;
  /** The last word of the type's address, which both editions of the standard share. */
  readonly type: string;
  readonly target: string;
}

/** The full path of a part that `from` names relative to its own folder, or from the root. */
function resolved(target: string, from: string): string {
  const steps = target.startsWith("/") ? [] : from.split("/").slice(0, -1);
  for (const step of target.split("/")) {
    if (step === "..") steps.pop();
    else if (step !== "." && step !== "") steps.push(step);
  }
  return steps.join("/");
}

/** The parts of a packed file by name, which the standard compares without regard to case. */
export class PackageParts {
  private readonly parts: ReadonlyMap<string, Uint8Array>;

  constructor(parts: Unzipped) {
    this.parts = new Map(Object.entries(parts).map(([name, bytes]) => [name.toLowerCase(), bytes]));
  }

  names(): readonly string[] {
    return [...this.parts.keys()];
  }

  has(name: string): boolean {
    return this.parts.has(name.toLowerCase());
  }

  text(name: string): string {
    const bytes = this.parts.get(name.toLowerCase());
    if (bytes === undefined)
      throw new FileRefused(
        `A part of the workbook (${name}) is missing, so it was not opened. Open it in Excel, let Excel repair it, and save it again.`,
      );
    return strFromU8(bytes);
  }

  /** The root of a part. Throws FileRefused where it is missing, damaged or cut short. */
  tree(name: string, take?: (element: XmlElement, parent: XmlElement) => boolean): XmlElement {
    const text = this.text(name);
    try {
      return readXml(text, take);
    } catch (error) {
      if (error instanceof FileRefused) throw error;
      throw new FileRefused(
        `A part of the workbook (${name}) is damaged or cut short, so it was not opened. Copy or download the file again, or let Excel repair it.`,
      );
    }
  }

  /** What a part points to within the file; "" stands for the file itself. */
  relations(name: string): readonly Relation[] {
    const cut = name.lastIndexOf("/") + 1;
    const list = `${name.slice(0, cut)}_rels/${name.slice(cut)}.rels`;
    if (!this.has(list)) return [];
    return childrenOf(this.tree(list), "Relationship").flatMap(({ attributes }) => {
      const { Id: id, Type: type, Target: target, TargetMode: mode } = attributes;
      if (id === undefined || type === undefined || target === undefined || mode === "External") return [];
      return [{ id, type: type.slice(type.lastIndexOf("/") + 1), target: resolved(target, name) }];
    });
  }
}
