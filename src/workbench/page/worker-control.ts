/** Why the pane cannot run in this browser, in words for the person before it. */
export class NoWorker extends Error {}

const patience = 10_000;

function controlled(container: ServiceWorkerContainer): Promise<void> {
  return new Promise((resolve, reject) => {
    if (container.controller !== null) {
      resolve();
      return;
    }
    const late = setTimeout(() => {
      reject(new NoWorker("The browser did not start the helper script that connects the pane. Reload the page."));
    }, patience);
    container.addEventListener(
      "controllerchange",
      () => {
        clearTimeout(late);
        resolve();
      },
      { once: true },
    );
  });
}

/** Resolves once the service worker answers this page's requests. Rejects with NoWorker. */
export async function takeWorker(): Promise<void> {
  if (!("serviceWorker" in navigator)) {
    throw new NoWorker(
      window.isSecureContext
        ? "This browser window allows no service workers, which the pane needs. Private windows of some browsers switch them off: use a normal window."
        : "The pane needs a secure address: open the workbench from https:// or from localhost.",
    );
  }
  const container = navigator.serviceWorker;
  const waiting = controlled(container);
  try {
    const registration = await container.register("service-worker.js");
    registration.active?.postMessage("claim");
  } catch (error) {
    waiting.catch(() => undefined);
    throw new NoWorker(
      `The browser refused the helper script that connects the pane (${error instanceof Error ? error.message : "no reason given"}).`,
    );
  }
  await waiting;
}
