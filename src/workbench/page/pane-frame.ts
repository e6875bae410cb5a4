const narrowest = 320;
const usual = 380;
const step = 20;

function element(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`The page has no element ${id}.`);
  return found;
}

/** Makes the pane's width a matter of dragging, keys and one button. Call once. */
export function arrangePane(): void {
  const pane = element("pane");
  const desk = pane.parentElement;
  const divider = element("divider");
  const toggle = element("pane-toggle");
  if (desk === null) throw new Error("This page has no place for the pane.");
  let width = usual;
  const widest = (): number => Math.max(narrowest, Math.round(window.innerWidth * 0.7));
  const setWidth = (wanted: number): void => {
    width = Math.min(widest(), Math.max(narrowest, Math.round(wanted)));
    desk.style.setProperty("--pane-width", `${width}px`);
    divider.setAttribute("aria-valuenow", String(width));
    divider.setAttribute("aria-valuemin", String(narrowest));
    divider.setAttribute("aria-valuemax", String(widest()));
    divider.setAttribute("aria-valuetext", `${width} pixels`);
    window.dispatchEvent(new Event("resize"));
  };
  const setOpen = (open: boolean): void => {
    desk.classList.toggle("collapsed", !open);
    toggle.setAttribute("aria-expanded", String(open));
    toggle.textContent = open ? "Hide pane" : "Show pane";
    window.dispatchEvent(new Event("resize"));
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
    ArrowLeft: () => width + step,
    ArrowRight: () => width - step,
    Home: widest,
    End: () => narrowest,
  };
  divider.addEventListener("keydown", (event) => {
    const wanted = keys[event.key];
    if (wanted === undefined) return;
    event.preventDefault();
    setWidth(wanted());
  });
  toggle.addEventListener("click", () => {
    setOpen(desk.classList.contains("collapsed"));
  });
  setWidth(width);
}

/** Loads the add-in's own page into the frame. */
export function openPane(): void {
  const frame = element("pane-frame");
  if (frame instanceof HTMLIFrameElement) frame.src = "taskpane.html";
}
