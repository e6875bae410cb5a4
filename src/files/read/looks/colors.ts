import { childOf, numberOf, type XmlElement } from "../xml-tree.ts";

/** The format's palette of numbered colors (ECMA-376, 18.8.27); the first eight stand twice. */
const palette = (
  "000000 FFFFFF FF0000 00FF00 0000FF FFFF00 FF00FF 00FFFF 000000 FFFFFF FF0000 00FF00 0000FF FFFF00 FF00FF 00FFFF " +
  "800000 008000 000080 808000 800080 008080 C0C0C0 808080 9999FF 993366 FFFFCC CCFFFF 660066 FF8080 0066CC CCCCFF " +
  "000080 FF00FF FFFF00 00FFFF 800080 800000 008080 0000FF 00CCFF CCFFFF CCFFCC FFFF99 99CCFF FF99CC CC99FF FFCC99 " +
  "3366FF 33CCCC 99CC00 FFCC00 FF9900 FF6600 666699 969696 003366 339966 003300 333300 993300 993366 333399 333333"
).split(" ");

/** Colors name the theme's entries in another order than the theme has them: light before dark (ECMA-376, 18.8.3). */
const themeOrder = [1, 0, 3, 2, 4, 5, 6, 7, 8, 9, 10, 11];

/** The theme's colors as RRGGBB, in its own order. */
export function themeColors(theme: XmlElement | undefined): readonly string[] {
  const scheme = childOf(theme, "themeElements", "clrScheme");
  return (
    scheme?.children.map(
      ({ children: [color] }) => color?.attributes["lastClr"] ?? color?.attributes["val"] ?? "000000",
    ) ?? []
  );
}

/** Lightness moved by a tint from -1 to 1 at the same hue and saturation (ECMA-376, 18.8.19). */
function tinted(hex: string, tint: number): string {
  const channels = [0, 2, 4].map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255);
  const lightness = (Math.max(...channels) + Math.min(...channels)) / 2;
  const wanted = tint < 0 ? lightness * (1 + tint) : lightness * (1 - tint) + tint;
  const room = 1 - Math.abs(2 * lightness - 1);
  const ratio = room === 0 ? 0 : (1 - Math.abs(2 * wanted - 1)) / room;
  return channels
    .map((channel) => Math.round(Math.min(1, Math.max(0, wanted + (channel - lightness) * ratio)) * 255))
    .map((channel) => channel.toString(16).padStart(2, "0"))
    .join("");
}

/** Reads a color element as #RRGGBB; undefined for none and for the system's own. */
export function colorReader(theme: readonly string[]): (element: XmlElement | undefined) => string | undefined {
  return (element) => {
    if (element === undefined) return undefined;
    const { rgb, theme: entry, indexed, tint } = element.attributes;
    const themed = numberOf(entry);
    const base =
      rgb !== undefined
        ? rgb.slice(-6)
        : themed !== undefined
          ? theme[themeOrder[themed] ?? themed]
          : palette[numberOf(indexed) ?? -1];
    if (base === undefined || !/^[0-9a-f]{6}$/i.test(base)) return undefined;
    return `#${tinted(base, numberOf(tint) ?? 0).toUpperCase()}`;
  };
}
