/** What Excel accepts as functions.json, as far as we rely on it: Microsoft's documented members and limits, in our words. */
const text = { type: "string", minLength: 1 };
const description = { type: "string", minLength: 1, maxLength: 255 };
const cellType = { enum: ["any", "string", "number", "boolean"] };
const dimensionality = { enum: ["scalar", "matrix"] };

function record(required: readonly string[], properties: Readonly<Record<string, unknown>>): Record<string, unknown> {
  return { type: "object", additionalProperties: false, required, properties };
}

const parameter = record(["name", "description", "type"], {
  name: { type: "string", pattern: "^[A-Za-z][A-Za-z0-9_]*$" },
  description,
  type: cellType,
  dimensionality,
  optional: { type: "boolean" },
  customEnumId: text,
});

const entry = record(["id", "name", "description", "helpUrl", "parameters", "result"], {
  id: { type: "string", pattern: "^[A-Z][A-Z0-9_.]{2,63}$" },
  name: { type: "string", pattern: "^[A-Z][A-Z0-9_.]{2,63}$" },
  description,
  helpUrl: { type: "string", pattern: "^https://[^ ]+#[a-z0-9_.]+$", maxLength: 2048 },
  parameters: { type: "array", items: parameter },
  result: record([], { type: cellType, dimensionality }),
});

const wordList = record(["id", "type", "values"], {
  id: text,
  type: { const: "string" },
  values: {
    type: "array",
    minItems: 1,
    items: record(["name", "stringValue"], { name: text, stringValue: text, tooltip: { type: "string" } }),
  },
});

export const functionsJsonSchema = record(["allowCustomDataForDataTypeAny", "functions"], {
  allowCustomDataForDataTypeAny: { const: true },
  functions: { type: "array", minItems: 1, items: entry },
  enums: { type: "array", items: wordList },
});
