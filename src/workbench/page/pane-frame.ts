import { pageElement } from "./page-element.ts";

const narrowest = 320;
const usual = 380;
const step = 20;

/** Whether the screen has room for one of sheet and pane only; the style sheet says from which width on. */
function showsOneAtATime(): boolean {
  return getComputedStyle(document.documentElement).getPropertyValue("--one-at-a-time").trim() === "yes";
}

/** The grid draws itself anew when the window changes. */
function sayChanged(): void {
  window.dispatchEvent(new Event("resize"));
}

/** Lets the pane be dragged, and moved by keys, to the width that suits. */
function arrangeWidth(desk: HTMLElement): void {
  const divider = pageElement("divider");
  let wanted = usual;
  const widest = (): number => Math.max(narrowest, Math.round(window.innerWidth * 0.7));
  const width = (): number => Math.min(widest(), Math.max(narrowest, Math.round(wanted)));
  const show = (): void => {
    desk.style.setProperty("--pane-width", `${width()}px`);
    divider.setAttribute("aria-valuenow", String(width()));
    divider.setAttribute("aria-valuemin", String(narrowest));
    divider.setAttribute("aria-valuemax", String(widest()));
    divider.setAttribute("aria-valuetext", `${width()} pixels`);
  };
  const setWidth = (given: number): void => {
    wanted = given;
    wanted = width();
    sayChanged();
  };
  divider.addEventListener("pointerdown", (event) => {
    divider.setPointerCapture(event.pointerId);
    desk.classList.add("dragging");
  });
  divider.addEventListener("pointermove", (event) => {
    if (desk.classList.contains("dragging")) setWidth(window.innerWidth - event.clientX);
  });
  for (const end of ["pointerup", "pointercancel"])
    divider.addEventListener(end, () => {
      desk.classList.remove("dragging");
    });
  divider.addEventListener("dblclick", () => {
    setWidth(usual);
  });
  const keys: Readonly<Record<string, () => number>> = {
    ArrowLeft: () => width() + step,
    ArrowRight: () => width() - step,
    Home: widest,
    End: () => narrowest,
  };
  divider.addEventListener("keydown", (event) => {
    const given = keys[event.key];
    if (given === undefined) return;
    event.preventDefault();
    setWidth(given());
  });
  // A window that was too narrow for the wanted width may become wide enough.
  window.addEventListener("resize", show);
  show();
}

/** Shows and hides the pane; where there is room for one only, the sheet takes its place. */
function arrangeToggle(desk: HTMLElement): void {
  const [toggle, sheet, pane] = [pageElement("pane-toggle"), pageElement("sheet"), pageElement("pane")];
  const show = (): void => {
    const [open, one] = [!desk.classList.contains("collapsed"), showsOneAtATime()];
    toggle.textContent = one ? (open ? "Sheet" : "Pane") : open ? "Hide pane" : "Show pane";
    if (one) toggle.removeAttribute("aria-expanded");
    else toggle.setAttribute("aria-expanded", String(open));
    // What is out of sight takes no focus.
    pane.inert = !open;
    sheet.inert = one && open;
  };
  toggle.addEventListener("click", () => {
    desk.classList.toggle("collapsed");
    show();
    sayChanged();
    // While it was hidden the grid could not bring the tab of the sheet in front into view.
    sheet.querySelector(".o-sheet.active")?.scrollIntoView({ block: "nearest", inline: "center" });
  });
  window.addEventListener("resize", show);
  show();
}

/** The actions are a menu where the head has no room for them; it closes with what is chosen, or when the pane is pressed. */
function arrangeMenu(): void {
  const actions = pageElement("actions");
  const close = (): void => {
    if (actions.matches(":popover-open")) actions.hidePopover();
  };
  actions.addEventListener("click", close);
  window.addEventListener("blur", close);
}

/** Makes the room for the pane a matter of dragging, keys and one button, and the head's actions a menu. Call once. */
export function arrangePane(): void {
  const desk = pageElement("pane").parentElement;
  if (desk === null) throw new Error("This page has no place for the pane.");
  arrangeToggle(desk);
  arrangeWidth(desk);
  arrangeMenu();
}

/** Loads a page of the add-in into the frame. */
export function openPane(page: string): void {
  const frame = pageElement("pane-frame");
  if (frame instanceof HTMLIFrameElement) frame.src = page;
}
