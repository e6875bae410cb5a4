/**
 * Microsoft's own Excel object model, loaded in a realm of its own: no Office, no browser, nothing sent anywhere.
 * For tests alone: its license lets it be used to design, develop and test add-ins.
 */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import vm from "node:vm";

import type { Executor } from "./wire-format.ts";

const files = {
  web: "excel-web-16.00.debug.js",
  win32: "excel-win32-16.01.debug.js",
  mac: "excel-mac-16.00.debug.js",
} as const;

/** A host that Microsoft builds the object model for. */
export type Build = keyof typeof files;

export interface ObjectModel {
  readonly excel: typeof Excel;
  readonly extension: typeof OfficeExtension;
  /** The API's name of a property by the name that goes over the wire, where the two differ by more than a capital. */
  readonly apiNames: ReadonlyMap<string, string>;
  /** From now on each new request context is answered by an executor of its own. */
  readonly answerWith: (makeExecutor: () => Executor) => void;
}

/** The library's own hook for hosts that answer by themselves; its types do not name it. */
interface Extension {
  readonly ClientRequestContext: { defaultRequestUrlAndHeaders: unknown };
}

const packageFolder = path.dirname(createRequire(import.meta.url).resolve("@microsoft/office-js/package.json"));

/** Setters whose request bears another name than the property, read out of the library's text. */
function readApiNames(source: string): ReadonlyMap<string, string> {
  const setter = /defineProperty\(\w+\.prototype, "(\w+)", \{\s+get: [\s\S]{0,600}?_invokeSetProperty\(this, "(\w+)"/g;
  return new Map([
    // Sent by a function elsewhere in the library, so that the pattern does not meet it.
    ["Gridlines", "showGridlines"],
    ...[...source.matchAll(setter)].flatMap(([, name = "", sent = ""]) =>
      sent.charAt(0).toLowerCase() + sent.slice(1) === name ? [] : [[sent, name] as const],
    ),
  ]);
}

/** The little of a page that the library looks at while it is loaded. */
function bareRealm(): Record<string, unknown> {
  const address = "https://localhost/";
  const realm: Record<string, unknown> = {
    console: { ...console, log: () => undefined },
    setTimeout,
    clearTimeout,
    setInterval,
    clearInterval,
    performance,
    navigator: { userAgent: "node" },
    location: { href: address, search: "", hash: "" },
    document: {
      URL: address,
      documentElement: {},
      getElementsByTagName: () => [],
      createElement: () => ({}),
      addEventListener: () => undefined,
    },
  };
  return Object.assign(realm, { window: realm, self: realm, globalThis: realm });
}

function load(build: Build): ObjectModel {
  const source = readFileSync(path.join(packageFolder, "dist", files[build]), "utf8");
  const realm = bareRealm();
  vm.createContext(realm);
  vm.runInContext(source, realm, { filename: files[build] });
  const extension = realm["OfficeExtension"] as Extension & typeof OfficeExtension;
  return {
    excel: realm["Excel"] as typeof Excel,
    extension,
    apiNames: readApiNames(source),
    answerWith: (makeExecutor) => {
      extension.ClientRequestContext.defaultRequestUrlAndHeaders = {
        _resolveRequestUrlAndHeaderInfo: () => Promise.resolve({ url: "https://judge.invalid/", headers: {} }),
        _createRequestExecutorOrNull: makeExecutor,
      };
    },
  };
}

const loaded = new Map<Build, ObjectModel>();

/** Three megabytes of script each: read once in a worker. */
export function objectModel(build: Build): ObjectModel {
  const found = loaded.get(build) ?? load(build);
  loaded.set(build, found);
  return found;
}
