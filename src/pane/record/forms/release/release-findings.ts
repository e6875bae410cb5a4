import { acidFor } from "../../../../../functions/discharge/acid-for.ts";
import { acidStages } from "../../../../../functions/discharge/acid-stages.ts";
import { dischargeCheck } from "../../../../../functions/discharge/discharge-check.ts";
import { askColumn, askNumber, askText } from "../../../../advice/ask.ts";
import { bathFacts } from "../../../../advice/bath-values.ts";
import type { Finding } from "../../../../advice/finding.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { isEntered, limitsOf, type ReleaseFacts, releaseStateOf } from "../../../../advice/release-facts.ts";
import { amount, figure, ph as phFigure } from "../../../../advice/wording/figures.ts";
import { dryAcids } from "../../../../core/discharge/acid-products.ts";
import { sewerLimit } from "../../../../core/limits/domains.ts";
import type { UnitOf } from "../../../../joblog/model/definition.ts";
import { mass, volume } from "../../../../joblog/model/units-of.ts";
import { acidBases, releaseState, yesNo } from "../../../../joblog/model/words.ts";

const [yes] = yesNo;

/** Dry acids are weighed, liquid ones measured. */
export function acidUnitOf(acid: string | undefined): UnitOf | undefined {
  if (acid === undefined || acid === "") return undefined;
  return dryAcids.some((dry) => dry === acid) ? mass : volume;
}

const wordsOfBasis: Readonly<Record<(typeof acidBases)[keyof typeof acidBases], string>> = {
  [acidBases.titration]: "by the titration",
  [acidBases.logged]:
    "an estimate by the water and concentrate logged, less what left; soil may have used up a part. Titrate to 4.5 to know",
  [acidBases.partly]:
    "by the concentrate logged, so a minimum: a water that was not tested counts for nothing. Titrate to 4.5 to know",
  [acidBases.ph]: "by the pH alone, so a minimum: soil and carbonate do not show. Titrate to 4.5 to know",
};

/** What the pH does not show where the concentrate's alkali strength is not known: the water's own carbonate. */
function waterFinding(release: ReleaseFacts, { log, system }: LogContext): readonly Finding[] {
  const brought = bathFacts(log, release.text("bath"))?.number("bicarbonateBrought");
  const [acid, purity] = [release.text("acid"), release.number("purity")];
  if (brought === undefined || brought < 0.05 || acid === undefined) return [];
  // In 1000 L so many meq to the liter are so many eq.
  const more = askNumber(acidFor, { volume: "1000 L", alkalinity: `${String(brought)} meq/L`, acid, purity, system });
  if (!more.known) return [];
  return [
    {
      tone: "plain",
      text: `The waters brought ${figure(brought, 2)} eq of carbonate, which is not in it: about ${amount(more.value)} ${acidUnitOf(acid)?.[system] ?? ""} more. With the concentrate's alkali strength (sheet Job) the log counts both.`,
    },
  ];
}

function acidFindings(release: ReleaseFacts, context: LogContext): readonly Finding[] {
  const needed = release.answer("acidNeeded");
  if (needed === undefined) return [];
  if (!needed.known) return [{ tone: "act", text: needed.why }];
  const acid = release.text("acid") ?? "";
  const unit = acidUnitOf(acid)?.[context.system] ?? "";
  if (needed.value === 0) return [{ tone: "good", text: "At or below the target already: no acid needed." }];
  const basis = release.text("acidBasis") ?? acidBases.ph;
  const findings: Finding[] = [
    {
      tone: basis === acidBases.titration ? "plain" : "watch",
      text: `Acid needed: ${amount(needed.value)} ${unit} of ${acid}, ${wordsOfBasis[basis]}.`,
    },
    ...(basis === acidBases.ph ? waterFinding(release, context) : []),
  ];
  const stages = askColumn(acidStages, { amount: needed.value });
  if (stages.known && release.number("phAfter1") === undefined) {
    const [first = 0, second = 0, rest = 0] = stages.value;
    findings.push({
      tone: "plain",
      text: `In stages: ${amount(first)} ${unit}, mix, read; ${amount(second)} ${unit}, mix, read; then ${amount(rest)} ${unit} in small portions. Less where the reading says that less is left.`,
    });
  }
  return findings;
}

/** Where the pH stands after the acid that is in. */
function stageFinding(release: ReleaseFacts): readonly Finding[] {
  const [ph, target] = [release.number("lastPh"), release.number("target")];
  if (ph === undefined || target === undefined || release.number("phAfter1") === undefined) return [];
  return ph > target
    ? [{ tone: "plain", text: `pH ${phFigure(ph)}, still ${phFigure(ph - target)} above the target.` }]
    : [
        {
          tone: "good",
          text: `pH ${phFigure(ph)}: at or below the target. Add no more; aerate and read again before anything goes.`,
        },
      ];
}

function cautionFindings(release: ReleaseFacts, context: LogContext): readonly Finding[] {
  const ph = release.number("ph");
  const temperature = release.number("temperature");
  const isSaid = release.answer("acidNeeded")?.known === false;
  const hot =
    ph === undefined || temperature === undefined || isSaid
      ? undefined
      : askText(dischargeCheck, {
          ph,
          low: sewerLimit.low,
          high: sewerLimit.high,
          temperature,
          system: context.system,
        });
  return [
    ...(release.text("corrosive") === yes
      ? [
          {
            tone: "act" as const,
            text: "At this pH it is corrosive hazardous waste, D002 (40 CFR 261.22), or too near to tell. Ask the authority before you treat it.",
          },
        ]
      : []),
    ...(hot?.known === false
      ? [{ tone: "act" as const, text: `${hot.why} Acid into a hot bath foams and spits.` }]
      : []),
  ];
}

/** What the release form says while it is filled in; never that a release is allowed. */
export function releaseFindings(release: ReleaseFacts, context: LogContext): readonly Finding[] {
  const { low, high, permit } = limitsOf(release);
  const state = releaseStateOf(release);
  const limits =
    low === undefined || high === undefined
      ? ""
      : ` Limits: pH ${figure(low, 2, 1)} to ${figure(high, 2, 1)}${permit === undefined ? "" : `, ${permit}`}.`;
  const stands: Finding = isEntered(release)
    ? {
        tone: "good",
        text: `Limits and results are entered.${limits} The permit and the person who signs for it decide whether it may go.`,
      }
    : {
        tone: state === releaseState.over ? "act" : "watch",
        text: `${state.charAt(0).toUpperCase()}${state.slice(1)}.${limits}`,
      };
  return [...cautionFindings(release, context), ...acidFindings(release, context), ...stageFinding(release), stands];
}
