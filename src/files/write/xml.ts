type Attributes = Readonly<Record<string, string | number | undefined>>;

/** The declaration that a part begins with. */
export const declaration = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

function marked(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => ({ "&": "&amp;", "<": "&lt;", ">": "&gt;" })[sign] ?? "&quot;");
}

// XML has no characters for these; the format spells them out (ECMA-376, 22.9.2.19).
const unwritable = /[\u0000-\u0008\u000b-\u001f\ufffe\uffff]|_(?=x[0-9A-Fa-f]{4}_)/g;

function spelledOut(character: string): string {
  return `_x${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}_`;
}

/** Text as a cell or a rule holds it: what XML cannot hold, and what would be read as such, spelled out. */
export function textOf(text: string): string {
  return marked(text.replace(unwritable, spelledOut));
}

/** The same within an attribute, where a line break would become a blank. */
function lineTextOf(text: string): string {
  return textOf(text).replace(/[\n\t]/g, spelledOut);
}

/** An element; attributes that are undefined are left out, the content is XML already. */
export function element(name: string, attributes: Attributes = {}, ...content: readonly string[]): string {
  let start = `<${name}`;
  for (const [attribute, value] of Object.entries(attributes))
    if (value !== undefined) start += ` ${attribute}="${lineTextOf(String(value))}"`;
  const inner = content.join("");
  return inner === "" ? `${start}/>` : `${start}>${inner}</${name}>`;
}
