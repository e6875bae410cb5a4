import { meterVerdict } from "../../joblog/model/words.ts";
import { lastReadingOf, type RowFacts, rowFacts } from "../bath-facts.ts";
import { fixed } from "../wording/figure-words.ts";
import { isCheckLate } from "./check-late.ts";
import { type Bath, limitOf } from "./step.ts";

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

/** A check that failed and left the meter as it was. */
function failedCheck(meter: string, last: RowFacts<"meterChecks"> | undefined): string | undefined {
  const verdict = last?.text("verdict");
  if (
    last === undefined ||
    verdict === undefined ||
    verdict === meterVerdict.within ||
    verdict === meterVerdict.incomplete
  )
    return undefined;
  if (
    verdict === meterVerdict.asFound &&
    (last.number("asLeft1") !== undefined || last.number("asLeft2") !== undefined)
  )
    return undefined;
  return `Meter ${meter}: ${verdict} at its last check. Clean the bulb, adjust, check again before you trust a reading.`;
}

/** What the meter of the bath's last reading wants, each a sentence. */
export function meterSentences(bath: Bath, now: number): readonly string[] {
  const meter = lastReadingOf(bath.log, bath.id)?.cells.meter;
  if (meter === undefined) return [];
  const last = checksOf(bath, String(meter)).at(-1);
  return [lateCheck(bath, String(meter), last, now), failedCheck(String(meter), last)].filter(
    (sentence) => sentence !== undefined,
  );
}
