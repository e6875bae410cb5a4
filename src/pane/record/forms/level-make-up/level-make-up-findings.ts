import type { Answer } from "../../../../advice/answer.ts";
import { askNumber } from "../../../../advice/ask.ts";
import { bathFacts } from "../../../../advice/bath-values.ts";
import { inJugs } from "../../../../advice/charge-dose.ts";
import type { FilledFields } from "../../../../advice/filled-fields.ts";
import type { Finding } from "../../../../advice/finding.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { amount as amountFigure, figure } from "../../../../advice/wording/figures.ts";
import { volume as volumeUnit } from "../../../../joblog/model/units-of.ts";
import { keyed, type MakeUpKey, riseOf, type SinceWater, sinceWater, splitOf } from "./level-make-up-facts.ts";

const volumeSymbol = { US: "US gal", metric: "L", imperial: "imperial gal" } as const;

function splitFindings(filled: FilledFields<MakeUpKey>, since: SinceWater, context: LogContext): readonly Finding[] {
  const unit = volumeUnit[context.system];
  const split = splitOf(filled, since, context);
  if (split?.known === false) return [{ tone: "act", text: split.why }];
  if (split === undefined) {
    const out =
      since.loads + since.drained > 0
        ? " The tank's drag-out by a load is not in the log (sheet Job), so it cannot be divided."
        : "";
    return [
      {
        tone: "plain",
        text: `Water alone is right for what evaporated; what was carried out or drained took concentrate along.${out}`,
      },
    ];
  }
  const { evaporated, carriedOut, concentrate } = split.value;
  const drained = since.drained > 0 ? ` and ${amountFigure(since.drained)} ${unit} drained` : "";
  const by = carriedOut === 0 ? "" : `, by ${String(since.loads)} ${since.loads === 1 ? "load" : "loads"}${drained}`;
  const findings: Finding[] = [
    {
      tone: "plain",
      text: `Lost since the last water: ${amountFigure(evaporated)} ${unit} evaporated, ${amountFigure(carriedOut)} ${unit} carried out as solution${by}.`,
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
function waterFindings(poured: number, filled: FilledFields<MakeUpKey>, context: LogContext): readonly Finding[] {
  const { system } = context;
  const facts = bathFacts(context.log, filled.text("bath"));
  const ofFill = facts?.text("water");
  const name = filled.text("water") ?? ofFill;
  const water = keyed(context, "waters", "water", name);
  const concentrate = keyed(context, "concentrates", "concentrate", facts?.text("concentrate"));
  const liters = askNumber("UNITCONVERT", poured, volumeSymbol[system], "L");
  const [hardness, alkalinity] = [water?.number("hardness"), water?.number("alkalinity")];
  const other = name !== ofFill;
  const start = other ? `${name ?? ""} is not the water of the fill (${ofFill ?? ""}). ` : "";
  const brings = other ? "It brings" : "The water brings";
  if (!liters.known || hardness === undefined || alkalinity === undefined)
    return [{ tone: other ? "act" : "watch", text: `${start}What it brings is not known: the water is not tested.` }];
  const unit = volumeUnit[system];
  const grams = figure((liters.value * hardness) / 1000, 1);
  const byHardness =
    hardness === 0
      ? ""
      : eats(
          askNumber(
            "HARDNESSDOSE",
            poured,
            hardness,
            concentrate?.number("capacity") ?? null,
            concentrate?.number("labelHardness") ?? null,
            system,
          ),
          unit,
        );
  const perLiter = askNumber("UNITCONVERT", alkalinity, "mg/L CaCO3", "meq/L");
  const equivalents = perLiter.known ? figure((liters.value * perLiter.value) / 1000, 3) : "0";
  const byAlkalinity =
    alkalinity === 0
      ? ""
      : eats(
          askNumber("ALKALINITYDOSE", poured, alkalinity, concentrate?.number("alkalinityStrength") ?? null, system),
          unit,
        );
  return [
    { tone: other ? "act" : "plain", text: `${start}${brings} ${grams} g of hardness as CaCO3${byHardness}.` },
    { tone: other ? "act" : "plain", text: `${brings} ${equivalents} eq of bicarbonate${byAlkalinity}.` },
  ];
}

/** Levels are read to about a tenth; from this share on amount and rise contradict each other (common practice, no source). */
const mismatch = 0.15;

/** What the level make-up form says while it is filled in. */
export function makeUpFindings(filled: FilledFields<MakeUpKey>, context: LogContext): readonly Finding[] {
  const [bath, when, poured] = [filled.text("bath"), filled.number("when"), filled.number("amount")];
  if (bath === undefined || when === undefined) return [];
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
            text: `${amountFigure(poured)} ${unit} do not fit that rise: read the level and the meter of the hose again.`,
          },
        ]
      : []),
    ...splitFindings(filled, sinceWater(context, bath, when), context),
    ...(poured === undefined ? [] : waterFindings(poured, filled, context)),
  ];
}
