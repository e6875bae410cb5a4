import { jobLog } from "../../src/joblog/job-log.ts";
import { entryWrites, shopCounts } from "./entry-writes.ts";
import { recalculated } from "./recalculation.ts";

/** Prints how many calls of our functions one entry of each kind makes Excel recalculate at most. */
export function benchRecalculation(): void {
  const sizes = [300, 3000];
  console.log(`entry                ${sizes.map((size) => `at ${String(size)} readings`.padStart(20)).join("")}`);
  for (const [kind, write] of Object.entries(entryWrites)) {
    const calls = sizes.map((size) => String(recalculated(jobLog, shopCounts(size), write).calls).padStart(20));
    console.log(`${kind.padEnd(21)}${calls.join("")}`);
  }
}
