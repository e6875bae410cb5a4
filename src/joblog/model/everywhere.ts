import type { FieldDefinition } from "./definition.ts";

/** What a new log starts with, the same in every unit system. */
export function everywhere(value: string | number): NonNullable<FieldDefinition["initial"]> {
  return { US: value, metric: value, imperial: value };
}
