import { alkalinityDose } from "../../../../../functions/charge/alkalinity-dose.ts";
import { hardnessDose } from "../../../../../functions/charge/hardness-dose.ts";
import { inJugs } from "../../../../advice/amounts/charge-dose.ts";
import { type Answer, askNumber } from "../../../../advice/ask.ts";
import type { RowFacts } from "../../../../advice/bath-facts.ts";
import { bathFacts } from "../../../../advice/bath-values.ts";
import { type DraftedRow, draftedRow } from "../../../../advice/drafted-row.ts";
import type { FilledFields } from "../../../../advice/filled-fields.ts";
import type { Finding } from "../../../../advice/finding.ts";
import { labFigure } from "../../../../advice/lab-figure.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { amount as amountFigure, figure } from "../../../../advice/wording/figures.ts";
import type { LogRow } from "../../../../joblog/model/definition.ts";
import { volume as volumeUnit } from "../../../../joblog/model/units-of.ts";
import { moreLeft } from "../../../../joblog/model/words.ts";
import { keyed, type MakeUpKey, riseOf } from "./level-make-up-facts.ts";

function splitFindings(
  addition: DraftedRow<"additions">,
  filled: FilledFields<MakeUpKey>,
  context: LogContext,
): readonly Finding[] {
  const unit = volumeUnit[context.system];
  const [loads, lost] = [addition.number("loadsSince") ?? 0, addition.number("drainedSince") ?? 0];
  const split = addition.answer("evaporated");
  if (split?.known === false) return [{ tone: "act", text: split.why }];
  if (split === undefined) {
    const words = addition.text("evaporated");
    if (words === moreLeft)
      return [
        {
          tone: "act",
          text: "More left with loads and drains than the level fell: check the units, the levels, and whether water went in meanwhile.",
        },
      ];
    const out =
      loads + lost > 0 ? " The tank's drag-out per load is not in the log (sheet Job), so it cannot be divided." : "";
    return [
      {
        tone: "plain",
        text: `Water alone is right for what evaporated; what was carried out or drained took concentrate along.${out}`,
      },
    ];
  }
  const [carriedOut, concentrate] = [addition.number("carriedOut") ?? 0, addition.number("concentrateDue") ?? 0];
  const drained = lost > 0 ? ` and ${amountFigure(lost)} ${unit} drained` : "";
  const by = carriedOut === 0 ? "" : `, by ${String(loads)} ${loads === 1 ? "load" : "loads"}${drained}`;
  const findings: Finding[] = [
    {
      tone: "plain",
      text: `Lost since the last water: ${amountFigure(split.value)} ${unit} evaporated, ${amountFigure(carriedOut)} ${unit} carried out as solution${by}.`,
    },
  ];
  if (concentrate < 0.0005) return [...findings, { tone: "good", text: "Water alone gives it back." }];
  const typed = filled.number("concentrateAmount");
  const due = `${inJugs(concentrate, context.system)} of concentrate went with it`;
  findings.push(
    typed === undefined
      ? { tone: "watch", text: `${due}: add it with the water, mix, read.` }
      : { tone: "plain", text: `${due}; ${amountFigure(typed)} ${unit} go in.` },
  );
  return findings;
}

function eats(answer: Answer<number>, unit: string): string {
  return answer.known && answer.value >= 0.0005
    ? `, which takes up ${amountFigure(answer.value)} ${unit} of concentrate`
    : "";
}

/** What the water brings into the bath, loudly where it is another water than that of the fill. */
function waterFindings(
  poured: number,
  addition: DraftedRow<"additions">,
  facts: RowFacts<"baths"> | undefined,
  context: LogContext,
): readonly Finding[] {
  const { system } = context;
  const ofFill = facts?.text("water");
  const name = addition.text("water") ?? ofFill;
  const water = keyed(context, "waters", "water", name);
  const concentrate = keyed(context, "concentrates", "concentrate", facts?.text("concentrate"));
  const [grams, equivalents] = [addition.number("hardnessCarried"), addition.number("bicarbonateCarried")];
  const other = name !== ofFill;
  const start = other ? `${name ?? ""} is not the water of the fill (${ofFill ?? ""}). ` : "";
  const brings = other ? "It brings" : "The water brings";
  if (grams === undefined || equivalents === undefined)
    return [{ tone: other ? "act" : "watch", text: `${start}What it brings is not known: the water is not tested.` }];
  const unit = volumeUnit[system];
  // The extra for water poured in later stands in no column.
  const byHardness =
    grams === 0
      ? ""
      : eats(
          askNumber(hardnessDose, {
            volume: poured,
            hardness: labFigure(water?.number("hardness")),
            capacity: concentrate?.number("capacity"),
            label_hardness: labFigure(concentrate?.number("labelHardness")),
            system,
          }),
          unit,
        );
  const byAlkalinity =
    equivalents === 0
      ? ""
      : eats(
          askNumber(alkalinityDose, {
            volume: poured,
            alkalinity: labFigure(water?.number("alkalinity")),
            strength_eq_L: concentrate?.number("alkalinityStrength"),
            system,
          }),
          unit,
        );
  return [
    {
      tone: other ? "act" : "plain",
      text: `${start}${brings} ${figure(grams, 1)} g of hardness as CaCO3${byHardness}.`,
    },
    { tone: other ? "act" : "plain", text: `${brings} ${figure(equivalents, 3)} eq of bicarbonate${byAlkalinity}.` },
  ];
}

/** Levels are read to about a tenth; from this share on amount and rise contradict each other (common practice, no source). */
const mismatch = 0.15;

/** What the level make-up form says while it is filled in. */
export function makeUpFindings(
  row: LogRow<"additions">,
  filled: FilledFields<MakeUpKey>,
  context: LogContext,
): readonly Finding[] {
  const [bath, when, poured] = [filled.text("bath"), filled.number("when"), filled.number("amount")];
  if (bath === undefined || when === undefined) return [];
  const addition = draftedRow(context.log, "additions", row);
  const rise = riseOf(filled, context);
  const unit = volumeUnit[context.system];
  const contradicts =
    rise !== undefined && poured !== undefined && rise > 0 && Math.abs(poured - rise) > mismatch * rise;
  return [
    ...(rise !== undefined && rise > 0
      ? [{ tone: "plain" as const, text: `That rise of the level is ${amountFigure(rise)} ${unit}.` }]
      : []),
    ...(contradicts
      ? [
          {
            tone: "watch" as const,
            text: `${amountFigure(poured)} ${unit} does not match that rise: read the level and the hose meter again.`,
          },
        ]
      : []),
    ...splitFindings(addition, filled, context),
    ...(poured === undefined ? [] : waterFindings(poured, addition, bathFacts(context.log, bath), context)),
  ];
}
