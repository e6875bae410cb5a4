import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { bathState, meterVerdict } from "../../joblog/model/words.ts";
import { lastReadingOf, type RowFacts, rowFacts } from "../bath-facts.ts";
import { fixed } from "../wording/figure-words.ts";
import { isCheckLate } from "./check-late.ts";
import { type Bath, limitOf, type Step } from "./step.ts";

function checksOf({ log }: Bath, meter: string): readonly RowFacts<"meterChecks">[] {
  const time = (facts: RowFacts<"meterChecks">): number => facts.number("when") ?? Number.NEGATIVE_INFINITY;
  return log.rows.meterChecks
    .map(rowFacts)
    .filter((facts) => facts.text("meter") === meter)
    .sort((a, b) => time(a) - time(b));
}

function lateCheck(
  bath: Bath,
  meter: string,
  last: RowFacts<"meterChecks"> | undefined,
  now: number,
): string | undefined {
  const at = last?.number("when");
  if (at === undefined)
    return `Meter ${meter} has no check in this log: check it in two buffers before you trust a reading.`;
  const most = limitOf(bath.log, "meterCheckDays");
  if (most === undefined || !isCheckLate(at, most, now)) return undefined;
  return `Meter ${meter} was last checked ${fixed(now - at, 0)} days ago: check it in two buffers.`;
}

/** How a meter stands by its last check: out, or put right since. */
type Standing = "fine" | "out" | "adjusted";

function standingOf(last: RowFacts<"meterChecks"> | undefined, log: LogSnapshot): Standing {
  const verdict = last?.text("verdict");
  if (verdict === meterVerdict.slope) return "out";
  if (last === undefined || verdict !== meterVerdict.asFound) return "fine";
  const adjusted = last.number("asLeft1") !== undefined || last.number("asLeft2") !== undefined;
  const limit = limitOf(log, "meterLimit");
  const left = last.number("left");
  const still = limit !== undefined && left !== undefined && Math.abs(left) > limit;
  return adjusted && !still ? "adjusted" : "out";
}

/** The meter of the bath's last reading, or the only one that the log knows, and its last check. */
function meterOf(
  bath: Bath,
): { readonly meter: string; readonly last: RowFacts<"meterChecks"> | undefined } | undefined {
  const named = lastReadingOf(bath.log, bath.id)?.cells.meter;
  const all = [...new Set(bath.log.rows.meterChecks.flatMap(({ cells }) => cells.meter ?? []))];
  const meter = named ?? (all.length === 1 ? all[0] : undefined);
  return meter === undefined ? undefined : { meter: String(meter), last: checksOf(bath, String(meter)).at(-1) };
}

const outWords = (meter: string, last: RowFacts<"meterChecks"> | undefined): string =>
  `Meter ${meter}: ${last?.text("verdict") ?? ""} at its last check. Clean the bulb, adjust, check again before you trust a reading.`;

/** A meter that is out comes before all that is read with it; one that was put right reads the bath anew. */
export function meterStep(bath: Bath): Step | undefined {
  const found = meterOf(bath);
  if (found === undefined) return undefined;
  const { meter, last } = found;
  const standing = standingOf(last, bath.log);
  if (standing === "out") {
    return {
      kind: "meter check",
      sentence: outWords(meter, last),
      reason: "Readings since its check before have the drift taken out, so verdicts may have changed.",
      urgent: true,
    };
  }
  const [checkedAt, readAt] = [last?.number("when"), bath.facts.number("lastReadingAt")];
  if (standing === "fine" || checkedAt === undefined || readAt === undefined || readAt >= checkedAt) return undefined;
  return {
    kind: "reading",
    sentence: `Read again: meter ${meter} was out of limits and has been adjusted since the last reading.`,
    reason:
      "The drift was taken out of the readings before, as far as two buffers tell; above the higher one that is uncertain.",
    urgent: true,
  };
}

/** A bath in use has it as its next step. */
const saidAsStep: readonly string[] = [bathState.inUse, bathState.topUp];

const neverChecked =
  "No meter check is in this log yet: check the meter in two buffers before it reads the baseline, which every later verdict rests on.";

const isUnchecked = ({ log }: Bath): boolean => log.rows.meterChecks.every(({ cells }) => cells.asFound1 === undefined);

/** What the meter of the bath's last reading wants, each a sentence. */
export function meterSentences(bath: Bath, now: number): readonly string[] {
  const meter = lastReadingOf(bath.log, bath.id)?.cells.meter;
  if (meter === undefined)
    return bath.facts.text("state") === bathState.baseline && isUnchecked(bath) ? [neverChecked] : [];
  const last = checksOf(bath, String(meter)).at(-1);
  const failed = standingOf(last, bath.log) === "out" && !saidAsStep.includes(bath.facts.text("state") ?? "");
  return [lateCheck(bath, String(meter), last, now), failed ? outWords(String(meter), last) : undefined].filter(
    (sentence) => sentence !== undefined,
  );
}
