import { catalogue } from "../../functions/catalogue.ts";
import type { WorksheetFunction } from "../../functions/define-function.ts";
import { answerCell } from "../../src/excel/functions/cell-boundary.ts";
import { median } from "./median.ts";

/** One call is shorter than the clock's tick, so a batch is timed as one. */
const callsInBatch = 100;
const batches = 100;

/** A function that takes one of these may solve the equilibrium of a solution. */
const chemistry = ["builder", "composition"];

/** Microseconds of one call with the first example's cells: median of the batches. */
function microsecondsOf(fn: WorksheetFunction): number {
  const cells = fn.examples[0]?.cells ?? [];
  const batch = (): number => {
    const start = performance.now();
    for (let call = 0; call < callsInBatch; call += 1) answerCell(fn, cells);
    return ((performance.now() - start) * 1000) / callsInBatch;
  };
  for (let warmUp = 0; warmUp < batches / 5; warmUp += 1) batch();
  return median(Array.from({ length: batches }, batch));
}

/** Prints what 10,000 calls of each function cost at the cell boundary. */
export function benchCalls(): void {
  console.log("function          median µs  chemistry");
  for (const fn of catalogue) {
    const solves = fn.arguments.some(({ name }) => chemistry.includes(name));
    console.log(`${fn.id.padEnd(16)} ${microsecondsOf(fn).toFixed(2).padStart(10)}  ${solves ? "yes" : "no"}`);
  }
}
