import { catalogue } from "../../../functions/catalogue.ts";
import type { CellInput, CellMatrix, CellValue, WorksheetFunction } from "../../../functions/define-function.ts";
import { evaluate } from "../../../functions/evaluate.ts";
import { findFunction } from "../../../functions/find-function.ts";
import { resultUnit, systemIn } from "../../../functions/reference/result-unit.ts";
import { DomainError } from "../../core/limits/domain-error.ts";
import { nearestWord } from "../../core/text/nearest-word.ts";
import { CellError, numberFrom, type Scalar, scalarOf, Spill, truthOf } from "../../joblog/evaluate/cell-value.ts";
import { operate } from "../../joblog/evaluate/operate.ts";
import { sheetFunctions } from "../../joblog/evaluate/sheet-functions.ts";
import type { Operator } from "../../joblog/formula/expression.ts";
import { CommandFailure } from "../failure.ts";
import { limitsOf, type OfferedName, offeredNames } from "./offered-functions.ts";
import type { FormulaNode } from "./read-formula.ts";

/** What a formula comes to: one value, or rows of values. */
export type Worked = Scalar | Spill;

/** A call of one of our functions within the formula, in the order in which they are worked out. */
export interface Called {
  readonly id: string;
  /** "" where it has none or none that can be told beforehand. */
  readonly unit: string;
}

type ApplyNode = Extract<FormulaNode, { name: string; args: FormulaNode[] }>;

const binary: readonly Operator[] = ["=", "<>", "<", ">", "<=", ">=", "&", "+", "-", "*", "/"];

const tooLarge = new CellError("#NUM!", "A result on the way is too large for a number, or none at all.");

const storable = (value: Scalar): Scalar => (typeof value === "number" && !Number.isFinite(value) ? tooLarge : value);

function power(left: Scalar, right: Scalar): Scalar {
  const [base, exponent] = [numberFrom(left), numberFrom(right)];
  if (base instanceof CellError) return base;
  if (exponent instanceof CellError) return exponent;
  // Excel leaves 0^0 undefined, JavaScript says 1.
  return base === 0 && exponent === 0 ? tooLarge : storable(base ** exponent);
}

function ofTwo(sign: string, left: Scalar, right: Scalar): Scalar {
  if (sign === "^") return power(left, right);
  const operator = binary.find((one) => one === sign);
  if (operator === undefined)
    throw new CommandFailure(`The formula has the operator ${sign}, which is not worked out here.`);
  return storable(scalarOf(operate(operator, left, right)));
}

/** Cell by cell, where one side or both have several. */
function cellByCell(sign: string, left: Worked, right: Worked): Worked {
  if (!(left instanceof Spill) && !(right instanceof Spill)) return ofTwo(sign, left, right);
  const sizeOf = (side: Worked): string | undefined =>
    side instanceof Spill ? `${String(side.rows.length)} by ${String(side.rows[0]?.length ?? 0)}` : undefined;
  const [a, b] = [sizeOf(left), sizeOf(right)];
  if (a !== undefined && b !== undefined && a !== b)
    throw new CommandFailure(`The operator ${sign} stands between ${a} and ${b} cells, and these do not fit together.`);
  const shape = left instanceof Spill ? left : right instanceof Spill ? right : new Spill([]);
  const at = (side: Worked, row: number, column: number): Scalar =>
    side instanceof Spill ? (side.rows[row]?.[column] ?? null) : side;
  return new Spill(
    shape.rows.map((line, row) => line.map((_, column) => ofTwo(sign, at(left, row, column), at(right, row, column)))),
  );
}

const cellsOf = (value: Worked): readonly Scalar[] => (value instanceof Spill ? value.rows.flat() : [value]);

const isError = (value: Scalar): value is CellError => value instanceof CellError;

function plain(cell: Scalar): CellValue {
  if (isError(cell)) throw new TypeError("An error is no argument.");
  return cell;
}

/** Works one formula out, without a workbook around it. */
export class Calculation {
  readonly calls: Called[] = [];

  /** Throws CommandFailure for what is not worked out here. */
  worked(node: FormulaNode): Worked {
    if ("rows" in node) return new Spill(node.rows.map((row) => row.map((cell) => scalarOf(this.worked(cell)))));
    if ("args" in node) return this.applied(node);
    if ("left" in node) return cellByCell(node.op, this.worked(node.left), this.worked(node.right));
    if ("op" in node) return this.signed(node.op, this.worked(node.operand));
    if ("operand" in node) return cellByCell("/", this.worked(node.operand), 100);
    if ("value" in node)
      return typeof node.value === "string" && isErrorNode(node) ? new CellError(node.value) : node.value;
    if ("name" in node)
      throw new CommandFailure(
        `The formula names ${node.name}, and there are no names here; a text stands in double quotes, as "${node.name}".`,
      );
    if (isMissing(node)) return null;
    throw new CommandFailure("The formula names cells, and there are none here; write the values in their place.");
  }

  private signed(sign: string, value: Worked): Worked {
    return sign === "-" ? cellByCell("*", value, -1) : value;
  }

  private applied({ name, args }: ApplyNode): Worked {
    const upper = name.toUpperCase();
    if (upper === "IF") return this.chosen(args);
    if (upper.startsWith("BATH.")) {
      const fn = findFunction(upper.slice("BATH.".length));
      if (fn !== undefined) return this.called(fn, args);
    }
    const offered = offeredNames.find((one) => one === upper);
    if (offered !== undefined) return this.reckoned(offered, args);
    const nearest = nearestWord(upper, [...catalogue.map(({ id }) => `BATH.${id}`), ...offeredNames, "IF"]);
    throw new CommandFailure(
      `There is no function ${name} here${nearest === undefined ? "; `bathsheet functions` lists those that there are" : `; ${nearest} is the nearest`}.`,
    );
  }

  /** The branch that counts alone, as Excel does. */
  private chosen(args: readonly FormulaNode[]): Worked {
    const [condition, result, otherwise] = args;
    if (condition === undefined || result === undefined || args.length > 3)
      throw new CommandFailure("IF takes a condition, a result, and what else.");
    const met = this.worked(condition);
    if (met instanceof Spill)
      throw new CommandFailure("IF takes one condition here, and this one gives several cells.");
    const holds = truthOf(met);
    if (isError(holds)) return holds;
    if (holds) return this.worked(result);
    return otherwise === undefined ? false : this.worked(otherwise);
  }

  private called(fn: WorksheetFunction, args: readonly FormulaNode[]): Worked {
    if (args.length > fn.arguments.length)
      throw new CommandFailure(
        `BATH.${fn.id} takes at most ${String(fn.arguments.length)} arguments, and ${String(args.length)} are given.`,
      );
    const given = args.map((arg) => this.worked(arg));
    const error = given.flatMap(cellsOf).find(isError);
    if (error !== undefined) return error;
    const cells = given.map((value): CellInput =>
      value instanceof Spill ? value.rows.map((row) => row.map(plain)) : plain(value),
    );
    try {
      const answer = evaluate(fn, cells);
      this.calls.push({ id: fn.id, unit: resultUnit(fn, systemIn(fn, cells)) });
      return asWorked(answer);
    } catch (refusal) {
      if (!(refusal instanceof DomainError)) throw refusal;
      return new CellError(refusal.refusal === "no-answer" ? "#N/A" : "#VALUE!", `BATH.${fn.id}: ${refusal.message}`);
    }
  }

  private reckoned(name: OfferedName, args: readonly FormulaNode[]): Worked {
    const { least, most, several } = limitsOf(name);
    if (args.length < least || args.length > most)
      throw new CommandFailure(
        `${name} takes ${least === most ? String(least) : most === Number.POSITIVE_INFINITY ? `at least ${String(least)}` : `${String(least)} to ${String(most)}`} argument${most === 1 || (least === 1 && most === Number.POSITIVE_INFINITY) ? "" : "s"}, and ${String(args.length)} ${args.length === 1 ? "is" : "are"} given.`,
      );
    const given = args.map((arg) => this.worked(arg));
    if (several !== true && given.some((value) => value instanceof Spill))
      throw new CommandFailure(
        `${name} takes single values here, and one of its arguments gives several cells; INDEX takes one of them.`,
      );
    const error = given.flatMap(cellsOf).find(isError);
    if (error !== undefined) return error;
    return storable(scalarOf(sheetFunctions[name](given)));
  }
}

function asWorked(answer: CellValue | CellMatrix): Worked {
  return Array.isArray(answer) ? new Spill(answer.map((row) => row.map((cell) => cell ?? ""))) : (answer ?? "");
}

/** The parser's number for an error among its kinds of nodes. */
const errorKind: number = 4;

/** The parser's number for an argument left out. */
const missingKind: number = 16;

const kindOf = ({ type }: FormulaNode): number => type;

const isErrorNode = (node: FormulaNode): boolean => kindOf(node) === errorKind;

const isMissing = (node: FormulaNode): boolean => kindOf(node) === missingKind;
