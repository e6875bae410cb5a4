import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import { afterAll, describe, expect, it } from "vitest";

import { catalogue } from "../../functions/catalogue.ts";
import type { Argument, WorksheetFunction } from "../../functions/define-function.ts";
import { functionsMetadata, offeredWords } from "../../scripts/build/functions-metadata.ts";
import { referencePage } from "../../scripts/reference-page/reference-page.ts";

interface Parameter {
  readonly name: string;
  readonly description: string;
  readonly type: string;
  readonly dimensionality?: string;
  readonly optional?: boolean;
  readonly customEnumId?: string;
}

interface Entry {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly helpUrl: string;
  readonly parameters: readonly Parameter[];
  readonly result: { readonly type?: string; readonly dimensionality?: string };
}

interface WordList {
  readonly id: string;
  readonly type: string;
  readonly values: readonly { readonly name: string; readonly stringValue: string; readonly tooltip: string }[];
}

interface Metadata {
  readonly allowCustomDataForDataTypeAny: boolean;
  readonly functions: readonly Entry[];
  readonly enums: readonly WordList[];
}

const metadata = JSON.parse(JSON.stringify(functionsMetadata("https://example.com/bathsheet"))) as Metadata;

/** Names that Excel would take for a cell or for one of its old macro functions. */
const cellLike = /^(?:[A-Z]{1,3}\d+|R\d*C\d*)$/;

function typeText({ excelType, dimensionality }: Pick<Argument<unknown>, "excelType" | "dimensionality">): string {
  return dimensionality === "matrix" ? `${excelType}[][]` : excelType;
}

/** One declaration for each different list of words, in the order of the arguments. */
const declaredLists = new Map<string, { readonly id: string; readonly words: readonly string[] }>();
for (const argument of catalogue.flatMap((fn) => fn.arguments)) {
  const words = offeredWords(argument);
  const id = argument.name.toUpperCase();
  if (words !== undefined && !declaredLists.has(words.join())) declaredLists.set(words.join(), { id, words });
}

function enumStub({ id, words }: { readonly id: string; readonly words: readonly string[] }): string {
  const members = words.map((word) => `  ${JSON.stringify(word)} = ${JSON.stringify(word)},`);
  return `/** @customenum {string} */\nenum ${id} {\n${members.join("\n")}\n}\n`;
}

function parameterType(argument: Argument<unknown>): string {
  return declaredLists.get(offeredWords(argument)?.join() ?? "")?.id ?? typeText(argument);
}

/** The function as a plain declaration that Microsoft's generator can read. */
function stub(fn: WorksheetFunction): string {
  const tags = fn.arguments.map(({ name, help, optional }) => ` * @param ${optional ? `[${name}]` : name} ${help}`);
  const parameters = fn.arguments.map(
    (argument) => `${argument.name}${argument.optional ? "?" : ""}: ${parameterType(argument)}`,
  );
  return `/**
 * ${fn.summary}
 * @customfunction ${fn.id} ${fn.id}
${tags.join("\n")}
 * @returns {${typeText(fn.result)}}
 */
function f${fn.id.replaceAll(".", "_")}(${parameters.join(", ")}): ${typeText(fn.result)} { return undefined as never; }
`;
}

const folder = mkdtempSync(join(tmpdir(), "bathsheet-"));
afterAll(() => {
  rmSync(folder, { recursive: true });
});

describe("functions.json", () => {
  it("has an id of 3 to 64 characters from A-Z 0-9 _ . that equals the name and is no cell address", () => {
    for (const { id, name } of metadata.functions) {
      expect(id).toMatch(/^[A-Z][A-Z0-9_.]{2,63}$/);
      expect(id).not.toMatch(cellLike);
      expect(name).toBe(id);
    }
  });

  it("has ids that stay different when a file writes the dot as an underscore", () => {
    const inFiles = metadata.functions.map(({ id }) => id.replaceAll(".", "_"));
    expect(new Set(inFiles).size).toBe(inFiles.length);
  });

  it("describes every function and argument in 1 to 255 characters", () => {
    for (const { id, description, parameters } of metadata.functions) {
      for (const text of [description, ...parameters.map((parameter) => parameter.description)]) {
        expect(text.length, `${id}: ${text}`).toBeGreaterThan(0);
        expect(text.length, `${id}: ${text}`).toBeLessThanOrEqual(255);
      }
    }
  });

  it("sends help to a heading that the reference page has", () => {
    const page = referencePage();
    for (const { helpUrl } of metadata.functions) {
      expect(helpUrl).toMatch(/^https:\/\/example\.com\/bathsheet\/reference\.html#/);
      expect(page).toContain(`id="${helpUrl.split("#")[1] ?? "?"}"`);
    }
  });

  it("uses only members and values that Excel knows", () => {
    const known = ["name", "description", "type", "dimensionality", "optional", "customEnumId"];
    expect(metadata.allowCustomDataForDataTypeAny).toBe(true);
    for (const { parameters, result } of metadata.functions) {
      for (const parameter of parameters) {
        expect(known).toEqual(expect.arrayContaining(Object.keys(parameter)));
        expect(["any", "number", "string", "boolean"]).toContain(parameter.type);
        expect([undefined, "matrix"]).toContain(parameter.dimensionality);
      }
      expect([undefined, "number", "string", "boolean"]).toContain(result.type);
    }
  });

  it("gives the parameters and results that Microsoft's generator reads from plain declarations", async () => {
    const file = join(folder, "stub.ts");
    writeFileSync(file, [...[...declaredLists.values()].map(enumStub), ...catalogue.map(stub)].join("\n"));
    const generated = await generateCustomFunctionsMetadata(file);
    expect(generated.errors).toEqual([]);
    const theirs = JSON.parse(generated.metadataJson) as Metadata;
    const shape = ({ id, parameters, result }: Entry) => ({
      id,
      result,
      parameters: parameters.map(({ name, type, dimensionality, optional, customEnumId }) => ({
        name,
        type,
        dimensionality,
        optional,
        customEnumId,
      })),
    });
    expect(metadata.functions.map(shape)).toEqual(theirs.functions.map(shape));
    // The generator keeps the quotes of a member's name, which would show in Excel's list.
    const unquoted = theirs.enums.map((list) => ({
      ...list,
      values: list.values.map((value) => ({ ...value, name: value.name.replaceAll('"', "") })),
    }));
    expect(metadata.enums).toEqual(unquoted);
  });

  it("offers the words of every argument that takes a few, and names each list once", () => {
    const offered = metadata.functions.flatMap(({ parameters }) =>
      parameters.filter(({ customEnumId }) => customEnumId !== undefined),
    );
    const few = catalogue.flatMap((fn) =>
      fn.arguments.filter(({ choices, dimensionality }) => choices !== undefined && dimensionality === "scalar"),
    );
    expect(offered.map(({ name }) => name)).toEqual(few.map(({ name }) => name));
    expect(new Set(metadata.enums.map(({ id }) => id.toUpperCase())).size).toBe(metadata.enums.length);
    for (const [index, { customEnumId }] of offered.entries()) {
      const list = metadata.enums.find(({ id }) => id === customEnumId);
      expect(list?.values.map(({ stringValue }) => stringValue)).toEqual(few[index]?.choices);
    }
  });
});
