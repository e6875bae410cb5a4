import { rowFacts, rowsOfBath } from "../../../../advice/bath-facts.ts";
import { type DraftedRow, draftedRow } from "../../../../advice/drafted-row.ts";
import type { Finding } from "../../../../advice/finding.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { amount as amountFigure, figure, ph } from "../../../../advice/wording/figures.ts";
import type { LogRow } from "../../../../joblog/model/definition.ts";
import { volume as volumeUnit } from "../../../../joblog/model/units-of.ts";

/** Minutes of degassing after a fresh fill (common practice, no source). */
const usualDegas = { low: 5, high: 20 } as const;

function takenOut(care: DraftedRow<"care">, context: LogContext): readonly Finding[] {
  const taken = care.number("amount");
  if (taken === undefined || taken === 0) return [];
  const unit = volumeUnit[context.system];
  const before = rowsOfBath(context.log, "care", care.text("bath") ?? "").reduce(
    (sum, row) => sum + (rowFacts(row).number("amount") ?? 0),
    0,
  );
  const concentrate = care.number("concentrateLost");
  const lost =
    concentrate === undefined ? "" : ` It takes about ${amountFigure(concentrate)} ${unit} of concentrate along.`;
  return [
    {
      tone: "plain",
      text: `${amountFigure(taken + before)} ${unit} taken out of this bath in all.${lost} The next level make-up says what to give back.`,
    },
  ];
}

/** A rinse is held against the water it was made of. */
function rinse(care: DraftedRow<"care">, { log }: LogContext): readonly Finding[] {
  const read = care.number("rinsePh");
  if (read === undefined) return [];
  const overWater = care.number("aboveWater");
  const above = overWater === undefined ? "" : ` That is ${ph(overWater)} above the bath's water.`;
  const earlier = rowsOfBath(log, "care", care.text("bath") ?? "")
    .map(rowFacts)
    .filter((row) => row.text("kind") === "rinse check")
    .at(-1)
    ?.number("rinsePh");
  const last = earlier === undefined ? "" : ` Last time ${ph(earlier)}.`;
  return [
    {
      tone: "plain",
      text: `Rinse pH ${ph(read)}.${above}${last} When to dump a rinse is the shop's own rule: alkali left on pieces dries to a film.`,
    },
  ];
}

/** What the care form says while it is filled in. */
export function careFindings(row: LogRow<"care">, context: LogContext): readonly Finding[] {
  const care = draftedRow(context.log, "care", row);
  if (care.number("bathRow") === undefined) return [];
  const minutes = care.number("minutes");
  switch (care.text("kind")) {
    case "skim":
    case "drain":
      return takenOut(care, context);
    case "filter":
      return [{ tone: "plain", text: "Keep bags and sludge in a labeled, closed drum until the result is in." }];
    case "rinse check":
      return rinse(care, context);
    case "degas":
      return minutes !== undefined && (minutes < usualDegas.low || minutes > usualDegas.high)
        ? [
            {
              tone: "watch",
              text: `A fresh fill usually takes ${figure(usualDegas.low, 0)} to ${figure(usualDegas.high, 0)} minutes; repeat the foil test if in doubt.`,
            },
          ]
        : [{ tone: "plain", text: "A foil test shows whether it is enough." }];
    case "foil test":
      return [{ tone: "plain", text: "Keep a picture of the foil and write its number in the note." }];
    default:
      return [];
  }
}
