/** What the grid's own controls are called; it names none of them itself. */
const named: Readonly<Record<string, string>> = {
  ".o-named-range-selector input": "Cell or name to go to",
  'input.o-number-input[max="300"]': "Zoom, percent",
  'input.o-number-input[max="400"]': "Font size",
  ".o-grid-add-rows-input": "Rows to add",
  ".o-topbar-composer .o-composer": "Formula bar",
  ".o-grid-composer .o-composer": "Cell",
  ".o-small-composer .o-composer": "Formula bar",
};

function set(element: Element, attributes: Readonly<Record<string, string>>): void {
  for (const [name, value] of Object.entries(attributes))
    if (element.getAttribute(name) !== value) element.setAttribute(name, value);
}

function makeReachable(place: HTMLElement): void {
  for (const [selector, name] of Object.entries(named))
    for (const element of place.querySelectorAll(selector)) set(element, { "aria-label": name });
  // A positive tabindex comes before everything else on the page, the link that skips the grid included.
  for (const composer of place.querySelectorAll(".o-composer"))
    set(composer, { tabindex: "0", role: "textbox", "aria-describedby": "grid-keys" });
  // Browsers stop at whatever scrolls: at bars that stand beside the cells, a stop that does nothing.
  for (const bar of place.querySelectorAll(".o-scrollbar")) set(bar, { tabindex: "-1" });
  for (const list of place.querySelectorAll(".o-sheet-list"))
    set(list, { tabindex: "0", role: "group", "aria-label": "Sheets" });
}

/** Names the grid's controls and puts them in the page's order, also those that it draws later; gives back how to stop. */
export function keepReachable(place: HTMLElement): () => void {
  let due = false;
  const observer = new MutationObserver(() => {
    if (due) return;
    due = true;
    requestAnimationFrame(() => {
      due = false;
      makeReachable(place);
    });
  });
  observer.observe(place, { childList: true, subtree: true });
  makeReachable(place);
  return () => {
    observer.disconnect();
  };
}

/** Puts the keyboard into the cells. */
export function focusCells(place: HTMLElement): void {
  place.querySelector<HTMLElement>(".o-grid-composer .o-composer")?.focus();
}

/**
 * What is typed on a cell takes the place of what it holds from the first key on. The grid's hidden field still holds the
 * cell's former content then, and it would stand behind the keys that come before the grid has drawn itself anew.
 */
export function replaceOnTyping(place: HTMLElement, isCellBeingEdited: () => boolean): () => void {
  const onInput = ({ target }: Event): void => {
    if (target instanceof Element && target.matches(".o-grid-composer .o-composer") && !isCellBeingEdited())
      getSelection()?.selectAllChildren(target);
  };
  place.addEventListener("beforeinput", onInput, true);
  return () => {
    place.removeEventListener("beforeinput", onInput, true);
  };
}
