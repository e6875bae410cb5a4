/**
 * Lets the add-in's pane run unchanged: its page asks Microsoft's server for office.js; inside the workbench the stand-in
 * answers instead. And lets the workbench open without a network: once the page is up the worker keeps all of its files,
 * and from then on answers with those, so that all are of one version.
 */
const officeScript = "https://appsforoffice.microsoft.com/lib/1/hosted/office.js";

/** The part of the service worker's scope that is used; the project's types are a page's. */
interface WorkerScope {
  /** What the build put before this script: the files of this version, each with its SHA-256. */
  readonly bathsheetFiles?: { readonly version: string; readonly files: Readonly<Record<string, string>> };
  readonly registration: { readonly scope: string; readonly active: unknown };
  readonly clients: {
    claim: () => Promise<void>;
    matchAll: () => Promise<readonly { postMessage: (message: unknown) => void }[]>;
  };
  skipWaiting: () => Promise<void>;
  addEventListener: (type: string, listener: (event: WorkerEvent) => void) => void;
}

interface WorkerEvent {
  readonly request: Request;
  readonly data: unknown;
  waitUntil: (work: Promise<unknown>) => void;
  respondWith: (response: Promise<Response>) => void;
}

const scope = self as unknown as WorkerScope;
const { version, files } = scope.bathsheetFiles ?? { version: "none", files: {} };
const cachePrefix = "bathsheet ";
const cacheName = `${cachePrefix}${version}`;
/** Stands in the cache once all files do. */
const mark = "all-files-are-here";

const addressOf = (file: string): string => new URL(file, scope.registration.scope).href;

async function sha256(content: ArrayBuffer): Promise<string> {
  const bytes = new Uint8Array(await crypto.subtle.digest("SHA-256", content));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** Rejects where a file does not come, or is of another version because the server is being filled anew. */
async function keepFile(cache: Cache, file: string, fingerprint: string): Promise<void> {
  if ((await cache.match(addressOf(file))) !== undefined) return;
  const response = await fetch(addressOf(file), { cache: "no-cache" });
  const content = await response.clone().arrayBuffer();
  if (!response.ok || (await sha256(content)) !== fingerprint) throw new Error(`${file} is not of this version.`);
  await cache.put(addressOf(file), response);
}

const isWhole = async (): Promise<boolean> => (await caches.match(addressOf(mark), { cacheName })) !== undefined;

/** Whether all files are kept; unknown for a moment when the browser has started the worker anew. */
let keeps: boolean | undefined;
isWhole().then(
  (whole) => {
    keeps = whole;
  },
  () => undefined,
);

/** Keeps what is not kept yet; gives back whether that was anything. */
async function keepFiles(): Promise<boolean> {
  if (scope.bathsheetFiles === undefined || (await isWhole())) return false;
  const cache = await caches.open(cacheName);
  for (const [file, fingerprint] of Object.entries(files)) await keepFile(cache, file, fingerprint);
  await cache.put(addressOf(mark), new Response(""));
  keeps = true;
  return true;
}

async function keepAndSay(): Promise<void> {
  if (!(await keepFiles())) return;
  for (const client of await scope.clients.matchAll()) client.postMessage("kept");
}

async function dropFormer(): Promise<void> {
  const names = await caches.keys();
  await Promise.all(
    names.filter((name) => name.startsWith(cachePrefix) && name !== cacheName).map((name) => caches.delete(name)),
  );
}

/** A kept file, or the server's where not all are kept. */
async function answer(file: string, request: Request | string): Promise<Response> {
  const kept = (await isWhole()) ? await caches.match(addressOf(file), { cacheName }) : undefined;
  return kept ?? fetch(request);
}

/** The file that an address stands for; undefined where it is none of this version's. */
function fileOf({ method, url }: Request): string | undefined {
  const [address = ""] = url.split(/[?#]/);
  if (method !== "GET" || !address.startsWith(scope.registration.scope)) return undefined;
  const name = address.slice(scope.registration.scope.length);
  const file = name === "" ? "index.html" : name;
  return Object.hasOwn(files, file) ? file : undefined;
}

scope.addEventListener("install", (event) => {
  // The first worker has nobody to wait for. A later one gets its files ready and then waits until the person says yes.
  event.waitUntil(scope.registration.active === null ? scope.skipWaiting() : keepFiles());
});

scope.addEventListener("activate", (event) => {
  event.waitUntil(Promise.all([scope.clients.claim(), dropFormer()]));
});

scope.addEventListener("message", (event) => {
  // A page that was reloaded past the worker asks to be taken under control again.
  if (event.data === "claim") event.waitUntil(scope.clients.claim());
  if (event.data === "keep") event.waitUntil(keepAndSay());
  if (event.data === "take over") event.waitUntil(scope.skipWaiting());
});

scope.addEventListener("fetch", (event) => {
  const standIn = "office-stand-in.js";
  if (event.request.url.split("?")[0] === officeScript) {
    event.respondWith(answer(standIn, addressOf(standIn)));
    return;
  }
  if (keeps === false) return;
  const file = fileOf(event.request);
  if (file !== undefined) event.respondWith(answer(file, event.request));
});
