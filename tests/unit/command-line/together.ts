import type { TypedRows } from "../../../src/command-line/rollup/tables.ts";

/** The rows of several logs as those of one folder. */
export const together = (logs: readonly TypedRows[]): TypedRows => ({
  logs: logs.flatMap((one) => one.logs),
  baths: logs.flatMap((one) => one.baths),
  additions: logs.flatMap((one) => one.additions),
  costs: logs.flatMap((one) => one.costs),
  loads: logs.flatMap((one) => one.loads),
  items: logs.flatMap((one) => one.items),
  claims: logs.flatMap((one) => one.claims),
});
