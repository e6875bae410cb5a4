/**
 * Files of a worker share its modules, and with them the global object: whatever a file puts there or in
 * the environment is taken away after it, so that no file can lean on one before it.
 */
// Fills in what Node lacks of a page, once, when it is loaded: before the first look at the global object.
import "@odoo/o-spreadsheet";

import { afterAll } from "vitest";

/** What Excel and the page would provide. */
const lent = ["Excel", "Office", "OfficeExtension", "CustomFunctions", "XMLSerializer", "DOMParser", "document"];

/** Stores that libraries keep here once they are loaded: zod's, and that of core-js, which Microsoft's generator brings. */
const storesOfLibraries = ["__core-js_shared__", "__zod_globalConfig", "__zod_globalRegistry"];

const names = new Set(Object.getOwnPropertyNames(globalThis));
const globals = new Map(lent.map((name) => [name, Object.getOwnPropertyDescriptor(globalThis, name)]));
const environment = { ...process.env };
const { debug } = console;

afterAll(() => {
  for (const [name, before] of globals) {
    if (before === undefined) Reflect.deleteProperty(globalThis, name);
    else Object.defineProperty(globalThis, name, before);
  }
  for (const name of Object.keys(process.env)) if (!(name in environment)) Reflect.deleteProperty(process.env, name);
  Object.assign(process.env, environment);
  console.debug = debug;
  const left = Object.getOwnPropertyNames(globalThis).filter(
    (name) => !names.has(name) && !lent.includes(name) && !storesOfLibraries.includes(name),
  );
  if (left.length > 0)
    throw new Error(`This file, or what it imports, leaves behind in the global object: ${left.join(", ")}`);
});
