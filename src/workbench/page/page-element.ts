/** A fixed element of the page. */
export function pageElement(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`The page has no element ${id}.`);
  return found;
}
