import { focusCells } from "./grid-access.ts";
import { toast } from "./notices.ts";
import { pageElement } from "./page-element.ts";

/** A part of the page that F6 comes to. */
interface Part {
  readonly place: HTMLElement;
  readonly enter: () => void;
}

function frameDocument(): Document | undefined {
  const frame = pageElement("pane-frame");
  return frame instanceof HTMLIFrameElement ? (frame.contentDocument ?? undefined) : undefined;
}

function isOnScreen(place: HTMLElement): boolean {
  return !place.inert && place.checkVisibility({ visibilityProperty: true });
}

// Elements of the frame are made by the frame's own classes, so none is an instance of the page's.
function isElement(target: EventTarget | null | undefined): target is HTMLElement {
  return target !== null && target !== undefined && "focus" in target;
}

function focusOn(element: EventTarget | null | undefined): void {
  if (isElement(element)) element.focus();
}

/** The pane's place, in which what had the focus last gets it again. */
class PanePart implements Part {
  readonly place = pageElement("pane");
  private last: Element | undefined;

  /** A page was loaded into the frame: `onKey` hears its keys too. */
  loaded(onKey: (event: KeyboardEvent) => void): void {
    const inside = frameDocument();
    if (inside === undefined) return;
    inside.addEventListener("keydown", onKey, true);
    inside.addEventListener("focusin", ({ target }) => {
      if (isElement(target)) this.last = target;
    });
  }

  /** A phone's keyboard has come up over the page, or the phone was turned: what is typed in stays in sight. */
  keepInSight(): void {
    const inside = frameDocument();
    if (inside?.hasFocus() === true) inside.activeElement?.scrollIntoView({ block: "nearest" });
  }

  enter(): void {
    focusOn(pageElement("pane-frame"));
    if (this.last?.isConnected === true) focusOn(this.last);
    else focusOn(frameDocument()?.querySelector('[role="tab"][tabindex="0"], a[href], button, input'));
  }
}

/** Lets the keyboard get round the page, also out of the grid, which takes Tab for itself as spreadsheets do. */
class PageParts {
  private readonly isCellBeingEdited: () => boolean;
  private readonly pane = new PanePart();
  private readonly sheet = pageElement("sheet");
  private readonly parts: readonly Part[];
  /** Escape was the last key in the grid. */
  private leaves = false;
  private lastKey = "";
  /** A key or the pointer was used on the page. */
  private isTouched = false;

  constructor(isCellBeingEdited: () => boolean) {
    this.isCellBeingEdited = isCellBeingEdited;
    this.parts = [
      {
        place: pageElement("head"),
        enter: () => {
          pageElement("log-name").focus();
        },
      },
      {
        place: this.sheet,
        enter: () => {
          focusCells(this.sheet);
        },
      },
      this.pane,
    ];
  }

  listen(): void {
    const onKey = (event: KeyboardEvent): void => {
      this.lastKey = event.key;
      this.isTouched = true;
      this.onKey(event);
    };
    window.addEventListener("keydown", onKey, true);
    window.addEventListener(
      "pointerdown",
      () => {
        this.lastKey = "";
        this.isTouched = true;
        this.leaves = false;
      },
      true,
    );
    pageElement("skip").addEventListener("click", (event) => {
      event.preventDefault();
      this.toPane();
    });
    this.sheet.addEventListener("focusin", ({ relatedTarget }) => {
      const fromOutside = !(relatedTarget instanceof Node && this.sheet.contains(relatedTarget));
      const hasCome = fromOutside && (this.lastKey === "Tab" || this.lastKey === "F6");
      if (hasCome) toast(pageElement("grid-keys").textContent);
    });
    window.addEventListener("resize", () => {
      // The frame has its new size once the page is laid out anew.
      requestAnimationFrame(() => {
        this.pane.keepInSight();
      });
    });
    pageElement("pane-frame").addEventListener("load", () => {
      this.pane.loaded(onKey);
      // The first focus is the pane's, not the grid's, unless the person is at work elsewhere already.
      if (!this.isTouched) this.toPane();
    });
  }

  private toPane(): void {
    if (this.pane.place.inert) pageElement("pane-toggle").click();
    this.pane.enter();
  }

  private onKey(event: KeyboardEvent): void {
    if (document.querySelector("dialog[open]") !== null) return;
    const { key, shiftKey, altKey, ctrlKey, metaKey } = event;
    if (altKey || ctrlKey || metaKey || key === "Shift") return;
    if (key === "F6") {
      event.preventDefault();
      event.stopPropagation();
      this.go(shiftKey ? -1 : 1);
    } else if (key === "Tab" && this.leaves) {
      event.preventDefault();
      event.stopPropagation();
      this.leaveGrid(shiftKey);
    }
    this.leaves = key === "Escape" && this.sheet.contains(document.activeElement) && !this.isCellBeingEdited();
  }

  private go(by: 1 | -1): void {
    const shown = this.parts.filter(({ place }) => isOnScreen(place));
    const at = shown.findIndex(({ place }) => place.contains(document.activeElement));
    const next = at < 0 ? (by > 0 ? 0 : shown.length - 1) : (at + by + shown.length) % shown.length;
    shown[next]?.enter();
  }

  /** To what comes before or after the grid, as Tab does everywhere else. */
  private leaveGrid(backwards: boolean): void {
    const before = [pageElement("menu"), pageElement("pane-toggle")];
    const after = [pageElement("divider"), pageElement("head").querySelector<HTMLElement>("button")];
    focusOn((backwards ? before : after).find((one) => one !== null && isOnScreen(one)));
  }
}

/** Takes over F6, and Tab after Escape, for as long as the page is open. Call once. */
export function arrangeParts(isCellBeingEdited: () => boolean): void {
  new PageParts(isCellBeingEdited).listen();
}
