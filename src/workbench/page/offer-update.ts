import { toast } from "./notices.ts";
import { pageElement } from "./page-element.ts";

interface Means {
  /** Writes at once what is not kept yet. */
  readonly flush: () => Promise<void>;
}

/** The line under the head of the page that says there is another version, and waits. */
class UpdateLine {
  private readonly line = pageElement("app-update");
  private onYes: () => void = () => undefined;

  constructor() {
    pageElement("update-now").addEventListener("click", () => {
      this.onYes();
    });
    pageElement("update-later").addEventListener("click", () => {
      this.show(false);
    });
  }

  private show(shown: boolean): void {
    this.line.hidden = !shown;
    // The grid has less room, or more.
    window.dispatchEvent(new Event("resize"));
  }

  say(words: string, yes: string, onYes: () => void): void {
    this.onYes = onYes;
    pageElement("update-now").textContent = yes;
    this.show(true);
    pageElement("app-update-words").textContent = words;
  }
}

function watchUpdates(registration: ServiceWorkerRegistration, { flush }: Means): void {
  const line = new UpdateLine();
  let isWanted = false;
  const reload = (): void => {
    void flush().then(() => {
      location.reload();
    });
  };
  const offer = (worker: ServiceWorker): void => {
    const takeOver = (): void => {
      isWanted = true;
      worker.postMessage("take over");
      // The browser waits with it until the former version has answered every tab.
      line.say("Switching to the new version. If it takes long, close Bathsheet's other tabs.", "Try again", takeOver);
    };
    line.say("A new version of Bathsheet is ready. What you entered stays.", "Use it now", takeOver);
  };
  if (registration.waiting !== null) offer(registration.waiting);
  registration.addEventListener("updatefound", () => {
    const worker = registration.installing;
    worker?.addEventListener("statechange", () => {
      if (worker.state === "installed") offer(worker);
    });
  });
  navigator.serviceWorker.addEventListener("controllerchange", () => {
    if (isWanted) reload();
    // Its later parts would come from the other version.
    else line.say("Bathsheet was changed to a new version in another tab.", "Reload", reload);
  });
  // A page that stays open for days would never ask by itself.
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") registration.update().catch(() => undefined);
  });
}

/** Keeps the page's files on this device, and offers a new version when there is one. Call once the pane is there. */
export async function keepApp(means: Means): Promise<void> {
  navigator.serviceWorker.addEventListener("message", ({ data }) => {
    if (data === "kept") toast("Bathsheet now opens without a network too on this device.");
  });
  const registration = await navigator.serviceWorker.ready;
  watchUpdates(registration, means);
  registration.active?.postMessage("keep");
}
