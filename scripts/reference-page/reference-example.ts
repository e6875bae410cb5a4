import type {
  CellInput,
  CellMatrix,
  CellValue,
  FunctionExample,
  WorksheetFunction,
} from "../../functions/define-function.ts";
import { evaluate } from "../../functions/evaluate.ts";
import { resultUnit, systemIn, unitsBySystem } from "../../functions/reference/result-unit.ts";
import { convert } from "../../src/core/units/unit-conversion.ts";
import type { UnitSystem } from "../../src/core/units/unit-system.ts";
import { unitSystems } from "../../src/core/units/unit-system.ts";
import { text } from "./html-text.ts";
import { scrollable } from "./scrollable.ts";

function cellText(cell: CellValue, figures: number): string {
  return typeof cell === "number" ? String(Number(cell.toPrecision(figures))).replace("-", "−") : String(cell ?? "");
}

function resultText(title: string, result: CellValue | CellMatrix, figures = 6): string {
  if (!Array.isArray(result)) return `<code>${text(cellText(result, figures))}</code>`;
  const rows = result.map(
    (row) => `<tr>${row.map((cell) => `<td>${text(cellText(cell, figures))}</td>`).join("")}</tr>`,
  );
  return scrollable(title, `<table class="spill"><tbody>${rows.join("")}</tbody></table>`);
}

function unitOf(fn: WorksheetFunction, system: UnitSystem): string {
  const shown = resultUnit(fn, system);
  return shown === "" ? "" : ` <span class="unit">${text(shown)}</span>`;
}

function inCall(cell: CellInput): string {
  if (Array.isArray(cell)) return `{${cell.map((row) => row.map(inCall).join(",")).join(";")}}`;
  return typeof cell === "string" ? `"${cell}"` : String(cell ?? "");
}

/** A shop measures in its own units, so the same amount comes in round figures of these. */
function inSystem(cell: CellInput, units: ReadonlyMap<string, string>, system: UnitSystem): CellInput {
  if (Array.isArray(cell)) return cell.map((row) => row.map((one) => inSystem(one, units, system) as CellValue));
  const [from, to] = [units.get("US"), units.get(system)];
  if (typeof cell !== "number" || from === undefined || to === undefined) return cell;
  const conversion = convert(cell, from, to);
  if (conversion.converted !== "value") throw new RangeError(`${from} does not convert to ${to}`);
  return Number(conversion.value.toPrecision(4));
}

/** The same example as a shop of another system types it, worked out now; nothing where no unit changes. */
function inOtherSystem(fn: WorksheetFunction, example: FunctionExample, system: UnitSystem): string {
  const last = fn.arguments.findIndex(({ name }) => name === "system");
  const cells = fn.arguments.map(({ unit }, index) =>
    index === last ? system : inSystem(example.cells[index] ?? null, unitsBySystem(unit), system),
  );
  const call = `=BATH.${fn.id}(${cells.map(inCall).join(",")})`;
  const title = `${fn.id}, ${system}`;
  return `<li><span class="quiet">${system}</span> <code>${text(call)}</code> gives ${resultText(title, evaluate(fn, cells), 4)}${unitOf(fn, system)}</li>`;
}

function hasUnitsOfSystem(fn: WorksheetFunction, { cells }: FunctionExample): boolean {
  return fn.arguments.some(({ unit }, index) => unitsBySystem(unit).size > 0 && typeof cells[index] === "number");
}

function otherSystems(fn: WorksheetFunction): string {
  const example = fn.examples.find((one) => systemIn(fn, one.cells) === "US" && hasUnitsOfSystem(fn, one));
  if (example === undefined || !fn.arguments.some(({ name }) => name === "system")) return "";
  const others = unitSystems.filter((system) => system !== "US").map((system) => inOtherSystem(fn, example, system));
  return `<p class="quiet">The same measured in other units:</p><ul class="examples">${others.join("")}</ul>`;
}

function worked(fn: WorksheetFunction, { formula, cells, result, tolerance, source }: FunctionExample): string {
  const accuracy =
    tolerance !== undefined && tolerance >= 1e-4 ? ` <span class="quiet">± ${String(tolerance)}</span>` : "";
  return `<li><code>${text(formula)}</code> gives ${resultText(`Result of ${fn.id}`, result)}${unitOf(fn, systemIn(fn, cells))}${accuracy}
<span class="source">Checked against: ${text(source)}.</span></li>`;
}

/** A function's worked examples with their sources, then the first one in the other systems of units. */
export function examples(fn: WorksheetFunction): string {
  return `<ul class="examples">${fn.examples.map((example) => worked(fn, example)).join("\n")}</ul>${otherSystems(fn)}`;
}
