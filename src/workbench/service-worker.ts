/**
 * Lets the add-in's pane run unchanged: its page asks Microsoft's server for office.js; inside the
 * workbench the stand-in answers instead. Every other request goes its usual way.
 */
const officeScript = "https://appsforoffice.microsoft.com/lib/1/hosted/office.js";

/** The part of the service worker's scope that is used; the project's types are a page's. */
interface WorkerScope {
  readonly registration: { readonly scope: string };
  readonly clients: { claim: () => Promise<void> };
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

scope.addEventListener("install", (event) => {
  event.waitUntil(scope.skipWaiting());
});

scope.addEventListener("activate", (event) => {
  event.waitUntil(scope.clients.claim());
});

/** A page that was reloaded past the worker asks to be taken under control again. */
scope.addEventListener("message", (event) => {
  if (event.data === "claim") event.waitUntil(scope.clients.claim());
});

scope.addEventListener("fetch", (event) => {
  if (event.request.url.split("?")[0] !== officeScript) return;
  event.respondWith(fetch(new URL("office-stand-in.js", scope.registration.scope)));
});
