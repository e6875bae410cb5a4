import type { LogRow } from "../../joblog/model/definition.ts";
import type { LogSnapshot, SnapshotRow } from "../../joblog/model/log-snapshot.ts";
import { rowFacts } from "../bath-facts.ts";
import { type DraftedLog, draftedLog } from "../drafted-row.ts";

/** A reading that a check reaches back to. */
interface ReachedReading {
  readonly id: string;
  readonly bath: string;
  readonly when: number;
  readonly was: number;
  readonly becomes: number;
  readonly verdictWas: string | undefined;
  readonly verdictBecomes: string | undefined;
}

/** A baseline whose readings give another figure then than is written down. */
interface MovedBaseline {
  readonly bath: string;
  readonly was: number;
  readonly becomes: number;
}

export interface Reach {
  readonly since: number;
  readonly readings: readonly ReachedReading[];
  readonly baselines: readonly MovedBaseline[];
}

const shown = (ph: number): number => Math.round(ph * 100) / 100;

/**
 * The log with one more check of a meter: its checks, its readings, those that make baselines, and what they
 * give are worked out anew.
 */
function withCheck(log: LogSnapshot, check: LogRow<"meterChecks">): DraftedLog {
  return draftedLog(log, [{ table: "meterChecks", row: check }], (table, { meter, counted }) => {
    if (table === "meterChecks") return meter === check["meter"];
    return table === "baths" || (table === "readings" && (meter === check["meter"] || counted === 1));
  });
}

/** What becomes of a reading; undefined for one without a pH. */
function reached(row: SnapshotRow<"readings">, after: DraftedLog): ReachedReading | undefined {
  const before = rowFacts(row);
  const now = after.standing("readings", row);
  const becomes = now.number("phCorrected");
  if (becomes === undefined) return undefined;
  // A baseline reading has no verdict of its own.
  const judged = before.text("purpose") !== "baseline";
  return {
    id: before.text("id") ?? "",
    bath: before.text("bath") ?? "",
    when: before.number("when") ?? 0,
    was: before.number("phCorrected") ?? before.number("ph") ?? becomes,
    becomes,
    verdictWas: judged ? before.text("verdict") : undefined,
    verdictBecomes: judged ? now.text("verdict") : undefined,
  };
}

/**
 * What a check changes in the readings since the meter's check before; undefined where there is none. The
 * drift is taken as even in between, and what the meter showed stays.
 */
export function reachOf(log: LogSnapshot, check: LogRow<"meterChecks">): Reach | undefined {
  const after = withCheck(log, check);
  const drafted = after.added("meterChecks");
  const [since, when] = [drafted.number("since"), drafted.number("when")];
  if (since === undefined || when === undefined) return undefined;
  const readings = log.rows.readings
    .filter(({ cells }) => cells["meter"] === check["meter"])
    .flatMap((row) => reached(row, after) ?? [])
    .filter((reading) => reading.when >= since && reading.when < when);
  const baselines = log.rows.baths.flatMap((row): MovedBaseline[] => {
    const facts = rowFacts(row);
    const [before, becomes] = [facts.number("baselineGiven"), after.standing("baths", row).number("baselineGiven")];
    const was = facts.number("baseline");
    return was === undefined || before === undefined || becomes === undefined || shown(before) === shown(becomes)
      ? []
      : [{ bath: facts.text("bath") ?? "", was, becomes }];
  });
  return { since, readings, baselines };
}
