import { beforeAll, expect, test } from "vitest";

import { readLog } from "../../../../src/excel/log-workbook.ts";
import type { LogRow } from "../../../../src/joblog/model/definition.ts";
import { repairLog } from "../../../../src/pane/start/mend-log.ts";
import { demoBath as bath, moment } from "../../../demo/demo-week-times.ts";
import { openLog } from "../../excel/log/prepared-log.ts";
import { demoWith } from "../../joblog/sheets/worked-log.ts";

const load = (id: string, claim: string, clock: string): LogRow<"loads"> => ({
  id,
  bath,
  claim,
  when: moment(1, clock),
  baskets: 2,
  soil: "light",
  minutes: 8,
});

beforeAll(async () => {
  await openLog(
    demoWith({
      loads: [load("L001", "D-0427", "10:00"), load("L002", "D-0431", "11:00"), load("L003", "D-0341", "12:00")],
      shares: [{ bath, claim: "D-0427" }],
    }),
  );
}, 120_000);

test("Repair adds the row that Shares lacks for a load typed by hand, and none for a claim that Job does not list", async () => {
  const { shared } = await repairLog.run(undefined);
  expect(shared).toEqual([`D-0431 in ${bath}`]);
  const log = await readLog();
  expect(log?.rows.shares.map(({ cells }) => [cells.bath, cells.claim])).toEqual([
    [bath, "D-0427"],
    [bath, "D-0431"],
  ]);
  expect((await repairLog.run(undefined)).shared).toEqual([]);
}, 120_000);
