import type { AxisState, ChartState, FigureState, LineSize, SeriesState } from "../../state/workbook-state.ts";
import { withoutNeedlessBackslash } from "./looks/number-formats.ts";
import type { PackageParts } from "./package-parts.ts";
import { areaText, readArea, sheetPrefix, splitSheet } from "./read-address.ts";
import { childOf, childrenOf, findElement, isOn, numberOf, textWithin, type XmlElement } from "./xml-tree.ts";

/** Pixels of the grid's lines that no one sized; it draws no chart's place without them. */
const usualColumn = 96;
const usualRow = 23;
/** A pixel at 96 an inch, in the format's units. */
const unitsPerPixel = 9525;

export interface LineSizes {
  readonly columns: Readonly<Record<number, LineSize>>;
  readonly rows: Readonly<Record<number, LineSize>>;
}

interface Corner {
  readonly row: number;
  readonly column: number;
  readonly x: number;
  readonly y: number;
}

function corner(element: XmlElement | undefined): Corner {
  const number = (name: string): number => numberOf(childOf(element, name)?.text) ?? 0;
  return {
    row: number("row"),
    column: number("col"),
    x: Math.round(number("colOff") / unitsPerPixel),
    y: Math.round(number("rowOff") / unitsPerPixel),
  };
}

function distance(from: number, to: number, sizes: Readonly<Record<number, LineSize>>, usual: number): number {
  let sum = 0;
  for (let line = from; line < to; line += 1) {
    const size = sizes[line];
    if (size?.hidden !== true) sum += size?.size ?? usual;
  }
  return sum;
}

/** A chart that was squeezed to nothing could not be taken hold of. */
const leastSize = 40;

/** Where a drawing stands: between two cells, or from one on at a size of its own. */
function placeOf(anchor: XmlElement, sizes: LineSizes): Omit<FigureState, "chart" | "other"> {
  const from = corner(childOf(anchor, "from"));
  const end = childOf(anchor, "to");
  const extent = childOf(anchor, "ext")?.attributes;
  const pixels = (value: string | undefined, otherwise: number): number =>
    Math.round((numberOf(value) ?? otherwise * unitsPerPixel) / unitsPerPixel);
  const to = corner(end);
  return {
    row: from.row,
    column: from.column,
    offset: { x: from.x, y: from.y },
    width: Math.max(
      leastSize,
      end === undefined
        ? pixels(extent?.["cx"], 536)
        : distance(from.column, to.column, sizes.columns, usualColumn) + to.x - from.x,
    ),
    height: Math.max(
      leastSize,
      end === undefined
        ? pixels(extent?.["cy"], 335)
        : distance(from.row, to.row, sizes.rows, usualRow) + to.y - from.y,
    ),
  };
}

/** A chart's range as the grid's charts name it, on its own sheet without the sheet; undefined where it is no single area. */
function rangeText(reference: string | undefined, sheet: string): string | undefined {
  if (reference === undefined) return undefined;
  const split = splitSheet(reference);
  const area = readArea(split.local);
  if (area === undefined) return undefined;
  const isHere = split.sheet === undefined || split.sheet.toLowerCase() === sheet.toLowerCase();
  return (isHere ? "" : sheetPrefix(split.sheet)) + areaText(area);
}

function referenceIn(series: XmlElement, ...names: readonly string[]): string | undefined {
  const holder = names.map((name) => childOf(series, name)).find((one) => one !== undefined);
  return holder === undefined ? undefined : findElement(holder, "f")?.text;
}

function seriesOf(element: XmlElement, sheet: string): SeriesState | undefined {
  const values = rangeText(referenceIn(element, "yVal", "val"), sheet);
  if (values === undefined) return undefined;
  const title = childOf(element, "tx");
  const label = findElement(title, "v")?.text;
  const shape = childOf(element, "spPr");
  const line = childOf(shape, "ln");
  const color = findElement(childOf(shape, "solidFill") ?? line, "srgbClr")?.attributes["val"];
  const dash = childOf(line, "prstDash")?.attributes["val"];
  const symbol = childOf(element, "marker", "symbol")?.attributes["val"];
  const x = rangeText(referenceIn(element, "xVal", "cat"), sheet);
  return {
    values,
    ...(label === undefined ? {} : { label }),
    ...(color === undefined ? {} : { color: `#${color.toUpperCase()}` }),
    ...(dash === undefined || dash === "solid" ? {} : { dashed: true }),
    ...(symbol === undefined ? {} : { markers: symbol !== "none" }),
    ...(x === undefined ? {} : { x }),
  };
}

function axisOf(axis: XmlElement | undefined): AxisState | undefined {
  if (axis === undefined) return undefined;
  const title = textWithin(findElement(childOf(axis, "title"), "rich"));
  const min = numberOf(childOf(axis, "scaling", "min")?.attributes["val"]);
  const max = numberOf(childOf(axis, "scaling", "max")?.attributes["val"]);
  const format = childOf(axis, "numFmt")?.attributes["formatCode"];
  const state = {
    ...(title === "" ? {} : { title }),
    ...(min === undefined ? {} : { min }),
    ...(max === undefined ? {} : { max }),
    ...(format === undefined || format === "General" ? {} : { format: withoutNeedlessBackslash(format) }),
  };
  return Object.keys(state).length === 0 ? undefined : state;
}

const legends: Readonly<Record<string, ChartState["legend"]>> = { t: "top", b: "bottom", l: "left", r: "right" };

/** Kinds of chart that the grid draws as one of its own. */
const kinds: Readonly<Record<string, ChartState["kind"]>> = {
  lineChart: "line",
  scatterChart: "line",
  barChart: "bar",
};

/** The chart of a part; undefined for a kind that the grid's charts do not stand for, and for one without a single area to show. */
function chartOf(root: XmlElement, name: string, sheet: string): ChartState | undefined {
  const chart = childOf(root, "chart");
  const plot = childOf(chart, "plotArea");
  const drawn = plot?.children.filter(({ name: element }) => element.endsWith("Chart")) ?? [];
  const [first] = drawn;
  const kind = kinds[first?.name ?? ""];
  if (first === undefined || kind === undefined || drawn.some((one) => one.name !== first.name)) return undefined;
  const all = drawn.flatMap((one) => childrenOf(one, "ser")).map((one) => seriesOf(one, sheet));
  const series = all.filter((one) => one !== undefined);
  if (series.length === 0 || series.length < all.length) return undefined;
  const labels = series[0]?.x;
  const axes = plot?.children.filter(({ name: element }) => /^(?:cat|val|date|ser)Ax$/.test(element)) ?? [];
  const [x, y] = [axisOf(axes[0]), axisOf(axes[1])];
  const place = childOf(chart, "legend", "legendPos")?.attributes["val"] ?? "r";
  return {
    kind,
    name,
    title: textWithin(findElement(childOf(chart, "title"), "rich")),
    ...(labels === undefined ? {} : { labels }),
    series: series.map(({ x: own, ...one }) => (own === undefined || own === labels ? one : { ...one, x: own })),
    ...(kind === "bar" ? { horizontal: childOf(first, "barDir")?.attributes["val"] === "bar" } : {}),
    legend: childOf(chart, "legend") === undefined ? "none" : (legends[place] ?? "right"),
    ...(x === undefined ? {} : { x }),
    ...(y === undefined ? {} : { y }),
  };
}

/** The charts of a sheet's drawing; `lost` is told in words what else is drawn there. */
export function readFigures(
  parts: PackageParts,
  drawing: string,
  sheet: string,
  sizes: LineSizes,
  lost: (what: string) => void,
): readonly FigureState[] {
  const relations = new Map(parts.relations(drawing).map(({ id, target }) => [id, target]));
  const anchors = parts.tree(drawing).children.filter(({ name }) => name.endsWith("Anchor"));
  return anchors.flatMap((anchor): readonly FigureState[] => {
    const frame = findElement(anchor, "graphicFrame");
    const target = relations.get(findElement(frame, "chart")?.attributes[":id"] ?? "");
    const described = findElement(anchor, "cNvPr")?.attributes;
    if (isOn(described?.["hidden"])) return [];
    const name = described?.["name"] ?? "";
    if (target === undefined) {
      lost(findElement(anchor, "pic") === undefined ? `a drawing (${name})` : `a picture (${name})`);
      return [];
    }
    const chart = parts.has(target) ? chartOf(parts.tree(target), name, sheet) : undefined;
    if (chart === undefined) {
      lost(`a chart of a kind that is not drawn here (${name})`);
      return [];
    }
    return [{ ...placeOf(anchor, sizes), chart }];
  });
}
