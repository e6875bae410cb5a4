import { existsSync, readFileSync } from "node:fs";
import path from "node:path";

import { Ajv, type Schema } from "ajv";
import { describe, expect, it } from "vitest";
import * as z from "zod";

import { functionsMetadata } from "../../scripts/build/functions-metadata.ts";
import { functionsJsonSchema } from "./functions-json-schema.ts";

const file = JSON.stringify(functionsMetadata("https://example.com/bathsheet"));

interface Spoilable {
  functions: {
    id: string;
    description: string;
    helpUrl: string;
    parameters: { type: string; name?: string; format?: string }[];
  }[];
  enums: { values: { stringValue?: string }[] }[];
}

const written = z.object({
  functions: z.array(z.object({ parameters: z.array(z.object({ customEnumId: z.string().optional() })) })),
  enums: z.array(z.object({ id: z.string() })),
});

const fresh = (): Spoilable => JSON.parse(file) as Spoilable;

function faultsBy(schema: Schema, data: unknown): string[] {
  const check = new Ajv({ allErrors: true, strict: true }).compile(schema);
  check(data);
  return (check.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message ?? ""}`);
}

describe("functions.json by its schema", () => {
  it("has no fault", () => {
    expect(faultsBy(functionsJsonSchema, fresh())).toEqual([]);
  });

  it.each<[string, (data: Spoilable) => void, RegExp]>([
    [
      "an id in small letters",
      ({ functions: [fn] }) => {
        if (fn) fn.id = "dose";
      },
      /\/functions\/0\/id must match pattern/,
    ],
    [
      "a description that Excel would cut",
      ({ functions: [fn] }) => {
        if (fn) fn.description = "x".repeat(256);
      },
      /must NOT have more than 255/,
    ],
    [
      "help over plain http",
      ({ functions: [fn] }) => {
        if (fn) fn.helpUrl = "http://example.com/#x";
      },
      /helpUrl must match pattern/,
    ],
    [
      "a type that Excel lacks",
      ({ functions: [fn] }) => {
        if (fn?.parameters[0]) fn.parameters[0].type = "date";
      },
      /type must be equal to one of/,
    ],
    [
      "a parameter without a name",
      ({ functions: [fn] }) => {
        delete fn?.parameters[0]?.name;
      },
      /must have required property 'name'/,
    ],
    [
      "a member that Excel lacks",
      ({ functions: [fn] }) => {
        if (fn?.parameters[0]) fn.parameters[0].format = "0.0";
      },
      /must NOT have additional properties/,
    ],
    [
      "a word without its text",
      ({ enums: [list] }) => {
        delete list?.values[0]?.stringValue;
      },
      /must have required property 'stringValue'/,
    ],
  ])("is refused with %s", (_, spoil, message) => {
    const data = fresh();
    spoil(data);
    expect(faultsBy(functionsJsonSchema, data).join("; ")).toMatch(message);
  });

  it("names a list of words only where there is one", () => {
    const { functions, enums } = written.parse(JSON.parse(file));
    const used = functions.flatMap(({ parameters }) => parameters.flatMap(({ customEnumId }) => customEnumId ?? []));
    expect([...new Set(used)].sort()).toEqual(enums.map(({ id }) => id).sort());
  });

  const schemaFile = path.join(process.env["OFFICE_SCHEMAS"] ?? "", "functions.schema.json");
  it.skipIf(!existsSync(schemaFile))("has no fault by Office's schema either [needs Office's schemas]", () => {
    expect(
      faultsBy(z.record(z.string(), z.unknown()).parse(JSON.parse(readFileSync(schemaFile, "utf8"))), fresh()),
    ).toEqual([]);
  });
});
