import type { AccuracyRow } from "../../tests/reference/chemistry/accuracy-row.ts";
import type { DatabaseRow } from "../../tests/reference/chemistry/unmodified-databases.ts";
import { databaseNames } from "../../tests/reference/chemistry/unmodified-databases.ts";
import { text } from "./html-text.ts";
import { scrollable } from "./scrollable.ts";

/** Two figures: an error is not known any better. */
export const percent = (value: number): string => `${String(Number((100 * value).toPrecision(2)))} %`;

const figureIn: Readonly<Record<AccuracyRow["unit"], (value: number) => string>> = {
  pH: (value) => `${value.toFixed(3)} pH`,
  relative: percent,
  "share of the opening dose": (value) => `${percent(value)} of the opening dose`,
  log10: (value) => `${value.toFixed(2)} log units`,
};

interface Line {
  readonly heading: string;
  readonly cells: readonly string[];
}

function table(title: string, headers: readonly string[], lines: readonly Line[]): string {
  const head = headers.map((header) => `<th scope="col">${text(header)}</th>`).join("");
  const body = lines.map(({ heading, cells }) => {
    const labelled = cells.map(
      (cell, index) => `<td data-label="${text(headers[index + 1] ?? "")}">${text(cell)}</td>`,
    );
    return `<tr><th scope="row">${text(heading)}</th>${labelled.join("")}</tr>`;
  });
  return scrollable(
    title,
    `<table class="stacks">
<thead><tr>${head}</tr></thead>
<tbody>${body.join("\n")}</tbody>
</table>`,
  );
}

function accuracyLine(row: AccuracyRow): Line {
  const figure = figureIn[row.unit];
  const goal =
    row.goalRootMeanSquare === undefined
      ? figure(row.goalLargest)
      : `${figure(row.goalLargest)}; mean ${figure(row.goalRootMeanSquare)}`;
  const cells = [row.against, String(row.rows), figure(row.largest), figure(row.rootMeanSquare), goal];
  return { heading: row.subject, cells };
}

const accuracyHeaders = ["What", "Against", "Rows", "Largest error", "Mean error (root mean square)", "Goal"];

/** What was measured, against what, and how far off it is. */
export function accuracyTable(title: string, figures: readonly AccuracyRow[]): string {
  return table(title, accuracyHeaders, figures.map(accuracyLine));
}

/** pH by us and by databases as they are published. */
export function databaseTable(title: string, rows: readonly DatabaseRow[]): string {
  return table(
    title,
    ["Bath", "°C", "Bathsheet", ...databaseNames],
    rows.map(({ bath, celsius, ours, others }) => ({
      heading: bath,
      cells: [String(celsius), ...[ours, ...others].map((pH) => pH?.toFixed(3) ?? "–")],
    })),
  );
}
