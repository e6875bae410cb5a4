/** What the reading after an addition says, by the same functions with the same arguments as the Additions sheet. */
import { volume as volumeUnit } from "../joblog/model/units-of.ts";
import { recovery } from "../joblog/model/words.ts";
import type { Answer } from "./answer.ts";
import { askNumber, askText } from "./ask.ts";
import type { RowFacts } from "./bath-facts.ts";
import { alkalinityOf } from "./bath-values.ts";
import type { Finding } from "./finding.ts";
import { topUpRange } from "./judge-reading.ts";
import type { LogContext } from "./log-context.ts";
import { shopsHouseShare } from "./shop-values.ts";
import { amount, ph as phFigure } from "./wording/figures.ts";

/** An addition and the readings around it, at the baseline's temperature. */
export interface Answered {
  readonly added: number | undefined;
  readonly before: number | undefined;
  readonly after: number;
}

function mostAtOnce(bath: RowFacts<"baths">, { log }: LogContext): number {
  const opening = bath.number("openingDose");
  return opening === undefined ? Number.POSITIVE_INFINITY : shopsHouseShare(log) * opening;
}

/**
 * What to add next to a bath short of its baseline: judged from what the last addition did, but at most
 * the house share of the opening dose at once, as on the Additions sheet; or, where the pH before it is
 * not known, the first addition of a top-up from here. Undefined where neither can be asked.
 */
export function furtherAddition(
  bath: RowFacts<"baths">,
  { added, before, after }: Answered,
  context: LogContext,
): Answer<number> | undefined {
  const baseline = bath.number("baseline");
  if (baseline === undefined) return undefined;
  const temperature = bath.number("baselineTemperature");
  if (added !== undefined && before !== undefined) {
    const builder = bath.text("builderUsed") ?? null;
    const next = askNumber(
      "NEXTADD",
      added,
      before,
      after,
      baseline,
      builder,
      temperature ?? null,
      alkalinityOf(bath),
      context.log.fields.tolerance ?? null,
      context.system,
    );
    return next.known ? { known: true, value: Math.min(next.value, mostAtOnce(bath, context)) } : next;
  }
  const range = topUpRange(bath, baseline, after, temperature, context);
  if (range?.known !== true) return range;
  const [, , , first] = range.value;
  return first === undefined ? undefined : { known: true, value: first };
}

function shortFindings(
  bath: RowFacts<"baths">,
  baseline: number,
  answered: Answered,
  context: LogContext,
): readonly Finding[] {
  const next = furtherAddition(bath, answered, context);
  const short = `Short of the baseline ${phFigure(baseline)}.`;
  if (next?.known === false)
    return [
      { tone: "act", text: short },
      { tone: "act", text: next.why },
    ];
  const add =
    next === undefined || next.value === 0
      ? ""
      : ` Add ${amount(next.value)} ${volumeUnit[context.system]}, mix, read again.`;
  return [
    { tone: "act", text: `${short}${add}` },
    {
      tone: "plain",
      text: "If two additions hardly move it, check meter, temperature, mixing and water before adding more.",
    },
  ];
}

/** RECOVERED as the Additions sheet asks it. */
export function recoveredWord(after: number, baseline: number, { log }: LogContext): Answer<string> {
  return askText("RECOVERED", after, baseline, log.fields.tolerance ?? null);
}

/** Whether the bath came back to its baseline after an addition, and what to add if it did not. */
export function judgeRecovery(bath: RowFacts<"baths">, answered: Answered, context: LogContext): readonly Finding[] {
  const baseline = bath.number("baseline");
  if (baseline === undefined) return [];
  const recovered = recoveredWord(answered.after, baseline, context);
  if (!recovered.known) return [{ tone: "act", text: recovered.why }];
  if (recovered.value === recovery.recovered)
    return [{ tone: "good", text: `Recovered: back within reach of the baseline ${phFigure(baseline)}.` }];
  if (recovered.value === recovery.over)
    return [{ tone: "watch", text: `Over the baseline ${phFigure(baseline)}: add nothing more.` }];
  return shortFindings(bath, baseline, answered, context);
}
