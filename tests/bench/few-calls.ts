import { jobLog } from "../../src/joblog/job-log.ts";
import { entryWrites, settledCounts, shopCounts } from "./entry-writes.ts";
import { recalculated } from "./recalculation.ts";

/** Baths that are in use where all others are closed and settled. */
const inUse = 3;

/** Prints how many calls of our functions one entry of each kind makes Excel recalculate at most. */
export function benchRecalculation(): void {
  const logs = [300, 3000].flatMap((readings) => {
    const counts = shopCounts(readings);
    return [
      { title: `at ${String(readings)} readings`, counts, settled: {} },
      { title: `all but ${String(inUse)} baths settled`, counts, settled: settledCounts(counts, inUse) },
    ];
  });
  console.log(`entry                ${logs.map(({ title }) => title.padStart(28)).join("")}`);
  for (const [kind, write] of Object.entries(entryWrites)) {
    const calls = logs.map(({ counts, settled }) =>
      String(recalculated(jobLog, counts, write, settled).calls).padStart(28),
    );
    console.log(`${kind.padEnd(21)}${calls.join("")}`);
  }
}
