/** What the reading after an addition says, as the addition's row on the Additions sheet will say it. */
import { topUpRange } from "../../../functions/top-up/top-up-range.ts";
import { volume as volumeUnit } from "../../joblog/model/units-of.ts";
import { recovery } from "../../joblog/model/words.ts";
import { type Answer, askRow } from "../ask.ts";
import type { RowFacts } from "../bath-facts.ts";
import { alkalinityOf } from "../bath-values.ts";
import type { DraftedRow } from "../drafted-row.ts";
import type { Finding } from "../finding.ts";
import type { LogContext } from "../log-context.ts";
import { shopsHouseShare, shopsMeterAccuracy } from "../shop-values.ts";
import { amount, ph as phFigure } from "../wording/figures.ts";

/** The first addition of a top-up from a pH at the baseline's temperature: no row says it, for the verdict may be to hold. */
function firstFrom(bath: RowFacts<"baths">, ph: number, { log, system }: LogContext): Answer<number> | undefined {
  const opening = bath.number("openingDose");
  if (opening === undefined) return undefined;
  const range = askRow(topUpRange, {
    opening_dose: opening,
    baseline: bath.number("baseline"),
    reading: ph,
    builder: bath.text("builderUsed"),
    temperature: bath.number("baselineTemperature"),
    alkalinity: alkalinityOf(bath),
    house_share: shopsHouseShare(log),
    meter_accuracy: shopsMeterAccuracy(log),
    system,
  });
  if (!range.known) return range;
  const [, , , first] = range.value;
  return first === undefined ? undefined : { known: true, value: first };
}

/**
 * What to add next to a bath short of its baseline, as the addition's row says; or, where that has no
 * amount or no pH before, the first addition of a top-up from here. Undefined where neither can be asked.
 */
export function furtherAddition(
  bath: RowFacts<"baths">,
  addition: DraftedRow<"additions">,
  context: LogContext,
): Answer<number> | undefined {
  const after = addition.number("phAfter");
  const answered = addition.number("amount") !== undefined && addition.number("phBefore") !== undefined;
  if (!answered) return after === undefined ? undefined : firstFrom(bath, after, context);
  const next = addition.answer("nextAddition");
  if (next !== undefined || addition.text("nextAddition") === undefined) return next;
  return {
    known: false,
    why: "The bath hardly answered. Check meter, temperature, mixing and water before adding more.",
  };
}

function shortFindings(
  bath: RowFacts<"baths">,
  baseline: number,
  addition: DraftedRow<"additions">,
  context: LogContext,
): readonly Finding[] {
  const next = furtherAddition(bath, addition, context);
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

/** Whether the bath came back to its baseline after an addition, and what to add if it did not. */
export function judgeRecovery(
  bath: RowFacts<"baths">,
  addition: DraftedRow<"additions">,
  context: LogContext,
): readonly Finding[] {
  const baseline = bath.number("baseline");
  const refusal = addition.refusal("recovery");
  if (refusal !== undefined) return [{ tone: "act", text: refusal }];
  const word = addition.text("recovery");
  if (baseline === undefined || word === undefined) return [];
  if (word === recovery.recovered)
    return [{ tone: "good", text: `Recovered: back within reach of the baseline ${phFigure(baseline)}.` }];
  if (word === recovery.over)
    return [{ tone: "watch", text: `Over the baseline ${phFigure(baseline)}: add nothing more.` }];
  return shortFindings(bath, baseline, addition, context);
}
