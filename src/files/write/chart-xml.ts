import type { AxisState, ChartState, SeriesState } from "../../state/workbook-state.ts";
import { fixedReference } from "./references.ts";
import { declaration, element, textOf } from "./xml.ts";

const chartNamespace = "http://schemas.openxmlformats.org/drawingml/2006/chart";
const drawingNamespace = "http://schemas.openxmlformats.org/drawingml/2006/main";
const relationNamespace = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

/** A point in the units of drawings. */
const point = 12_700;

function value(name: string, val: string | number): string {
  return element(name, { val });
}

/** Hundredths of a point. */
const titleSize = 1000;

function richText(text: string, bold: boolean): string {
  const look = { sz: titleSize, b: bold ? 1 : 0 };
  return element(
    "c:rich",
    {},
    element("a:bodyPr"),
    element(
      "a:p",
      {},
      element("a:pPr", {}, element("a:defRPr", look)),
      element("a:r", {}, element("a:rPr", { lang: "en-US", ...look }), element("a:t", {}, textOf(text))),
    ),
  );
}

function title(text: string | undefined, bold: boolean): string {
  if (text === undefined || text === "") return "";
  return element("c:title", {}, element("c:tx", {}, richText(text, bold)), value("c:overlay", 0));
}

function solidFill(color: string): string {
  return element("a:solidFill", {}, value("a:srgbClr", color.replace("#", "").toUpperCase()));
}

function reference(name: string, kind: "numRef" | "strRef", range: string | undefined): string {
  return range === undefined ? "" : element(name, {}, element(`c:${kind}`, {}, element("c:f", {}, textOf(range))));
}

/** The grid's colors for series that were given none begin with this one. */
const usualColor = "#1F4E57";

function marker({ markers }: SeriesState, color: string): string {
  if (markers !== true) return element("c:marker", {}, value("c:symbol", "none"));
  const fill = element("c:spPr", {}, solidFill(color));
  return element("c:marker", {}, value("c:symbol", "circle"), value("c:size", 6), fill);
}

class ChartXml {
  private readonly chart: ChartState;
  private readonly sheet: string;

  constructor(chart: ChartState, sheet: string) {
    this.chart = chart;
    this.sheet = sheet;
  }

  private range(text: string | undefined): string | undefined {
    return text === undefined ? undefined : fixedReference(text, this.sheet);
  }

  private series(state: SeriesState, index: number): string {
    const { label, color = usualColor, dashed, values, x } = state;
    const isBar = this.chart.kind === "bar";
    const outline = element(
      "a:ln",
      { w: 1.5 * point },
      solidFill(color),
      dashed === true ? value("a:prstDash", "dash") : "",
    );
    const labels = this.range(x ?? this.chart.labels);
    return element(
      "c:ser",
      {},
      value("c:idx", index),
      value("c:order", index),
      label === undefined ? "" : element("c:tx", {}, element("c:v", {}, textOf(label))),
      element("c:spPr", {}, isBar ? solidFill(color) : outline),
      isBar ? value("c:invertIfNegative", 0) : marker(state, color),
      isBar ? reference("c:cat", "strRef", labels) : reference("c:xVal", "numRef", labels),
      reference(isBar ? "c:val" : "c:yVal", "numRef", this.range(values)),
      isBar ? "" : value("c:smooth", 0),
    );
  }

  private plot(): string {
    const series = this.chart.series.map((one, index) => this.series(one, index));
    const axes = value("c:axId", 1) + value("c:axId", 2);
    if (this.chart.kind === "bar")
      return element(
        "c:barChart",
        {},
        value("c:barDir", this.chart.horizontal === true ? "bar" : "col"),
        value("c:grouping", "clustered"),
        value("c:varyColors", 0),
        ...series,
        value("c:gapWidth", 100),
        axes,
      );
    return element(
      "c:scatterChart",
      {},
      value("c:scatterStyle", "lineMarker"),
      value("c:varyColors", 0),
      ...series,
      axes,
    );
  }

  private axis(name: "c:catAx" | "c:valAx", id: 1 | 2, state: AxisState = {}): string {
    const isBar = this.chart.kind === "bar";
    const lies = isBar && this.chart.horizontal === true;
    const isFirst = id === 1;
    const lines = element("c:spPr", {}, element("a:ln", { w: 0.75 * point }, solidFill("#D3DCDE")));
    return element(
      name,
      {},
      value("c:axId", id),
      element(
        "c:scaling",
        {},
        value("c:orientation", lies && isFirst ? "maxMin" : "minMax"),
        state.max === undefined ? "" : value("c:max", state.max),
        // Excel chooses a beginning of its own, as the host did.
        state.min === undefined || (!isFirst && this.chart.automaticMinimum === true) ? "" : value("c:min", state.min),
      ),
      value("c:delete", 0),
      value("c:axPos", isFirst !== lies ? "b" : "l"),
      isFirst ? "" : element("c:majorGridlines", {}, lines),
      title(state.title, false),
      element("c:numFmt", { formatCode: state.format ?? "General", sourceLinked: state.format === undefined ? 1 : 0 }),
      value("c:majorTickMark", "out"),
      value("c:minorTickMark", "none"),
      value("c:tickLblPos", isFirst ? "low" : "nextTo"),
      value("c:crossAx", isFirst ? 2 : 1),
      value("c:crosses", lies && !isFirst ? "max" : "autoZero"),
    );
  }

  part(): string {
    const { chart } = this;
    const places = { top: "t", bottom: "b", left: "l", right: "r" } as const;
    const legend =
      chart.legend === "none"
        ? ""
        : element("c:legend", {}, value("c:legendPos", places[chart.legend]), value("c:overlay", 0));
    return (
      declaration +
      element(
        "c:chartSpace",
        { "xmlns:c": chartNamespace, "xmlns:a": drawingNamespace, "xmlns:r": relationNamespace },
        value("c:roundedCorners", 0),
        element(
          "c:chart",
          {},
          title(chart.title, true),
          value("c:autoTitleDeleted", chart.title === "" ? 1 : 0),
          element(
            "c:plotArea",
            {},
            element("c:layout"),
            this.plot(),
            this.axis(chart.kind === "bar" ? "c:catAx" : "c:valAx", 1, chart.x),
            this.axis("c:valAx", 2, chart.y),
          ),
          legend,
          value("c:plotVisOnly", 1),
          value("c:dispBlanksAs", "span"),
        ),
      )
    );
  }
}

/** A chart's part. It reads its cells, so that it follows the log. */
export function chartPart(chart: ChartState, sheet: string): string {
  return new ChartXml(chart, sheet).part();
}
