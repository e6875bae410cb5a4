import { beforeAll, expect, it } from "vitest";

import { numberIn, readCsv, textIn } from "../../reference/read-csv.ts";
import { number, type PlayedWeek, row } from "../week/played-week.ts";
import { compareLogs, everything } from "./compare-logs.ts";
import { fullContent } from "./full-content.ts";
import { foreignWords } from "./headings.ts";
import { laidOutIn, type MetricWeek, playMetricWeek } from "./other-logs.ts";
import { said } from "./said.ts";

const shares = readCsv("../demo/week/expected-shares.csv");

/** Asked of a bare number in °F alone, so another log has nothing that would be the same. */
const onlyInFahrenheit = ["readings.coldSample"];

export function holdsInMetricUnits(week: () => PlayedWeek): void {
  let metric: MetricWeek;
  const filled = new Set<string>();

  beforeAll(async () => {
    metric = await playMetricWeek(week());
  }, 600_000);

  it("typed into a metric log, every cell is the same thing after every entry", () => {
    expect(metric.entries).toHaveLength(week().entries.length);
    for (const [index, { event, log }] of week().entries.entries()) {
      const other = metric.entries[index];
      if (other === undefined) throw new RangeError(event.at);
      const { unlike, filled: had } = compareLogs(log, other.log, "metric");
      expect(unlike, event.at).toEqual([]);
      for (const id of had) filled.add(id);
    }
  });

  it("the forms find and ask the same, and Now says the same of every bath after every entry", () => {
    for (const [index, played] of week().entries.entries()) {
      const other = metric.entries[index];
      if (other === undefined) throw new RangeError(played.event.at);
      expect(said(other, "metric"), played.event.at).toEqual(said(played, "US"));
    }
  });

  it.each(shares)("by $basis the share of $claim is $share, to the cent", (one) => {
    const log = metric.shared.get(textIn(one, "basis"));
    if (log === undefined) throw new RangeError(textIn(one, "basis"));
    expect(number(row(log, "shares", { bath: "B-T1-0301", claim: textIn(one, "claim") }), "share")).toBe(
      numberIn(one, "share"),
    );
    expect(log.fields.costNotPlaced).toBe(0);
  });

  it("laid out with every input filled in, a metric and an imperial log hold the same", async () => {
    const content = fullContent(week().log);
    const us = await laidOutIn(content, "US");
    for (const system of ["metric", "imperial"] as const) {
      const { unlike, filled: had } = compareLogs(us, await laidOutIn(content, system), system);
      expect(unlike, system).toEqual([]);
      for (const id of had) filled.add(id);
    }
  }, 120_000);

  it("every column and named cell of the log had something to compare", () => {
    expect(everything.filter((id) => !filled.has(id))).toEqual(onlyInFahrenheit);
  });

  it.each(["metric", "imperial"] as const)("a %s log speaks of no other units", (system) => {
    expect(foreignWords(system)).toEqual([]);
  });
}
