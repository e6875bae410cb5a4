import { dose as doseFunction } from "../../../functions/charge/dose.ts";
import { unitConvert } from "../../../functions/units/unit-convert.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import { volume as volumeWords } from "../../joblog/model/units-of.ts";
import { waterNotTested } from "../../joblog/model/words.ts";
import { type Answer, askNumber } from "../ask.ts";
import { type DraftedRow, draftedRow } from "../drafted-row.ts";
import type { FilledFields } from "../filled-fields.ts";
import type { Finding } from "../finding.ts";
import type { LogContext } from "../log-context.ts";
import { amount, figure } from "../wording/figures.ts";

/** What a dose is worked out from. */
type DoseKey = "tank" | "water" | "concentrate" | "strength";

/** The dose of a charge, piece by piece as the Baths sheet works it out. */
export interface ChargeDose {
  readonly volume: number | undefined;
  readonly base: Answer<number> | undefined;
  readonly forHardness: Answer<number> | undefined;
  readonly forAlkalinity: Answer<number> | undefined;
  readonly planned: number | undefined;
}

/** An extra in figures, or in words where a figure is missing for it; undefined as long as the choice is not complete. */
function extra(
  bath: DraftedRow<"baths">,
  column: "hardnessDose" | "alkalinityDose",
  { ofWater, ofConcentrate }: { readonly ofWater: string; readonly ofConcentrate: string },
): Answer<number> | undefined {
  const words = bath.text(column);
  const answer = bath.answer(column);
  if (answer !== undefined || words === undefined) return answer;
  return { known: false, why: words === waterNotTested ? ofWater : ofConcentrate };
}

/** The dose for the tank, water, concentrate and strength chosen so far, as the bath's row will say it. */
export function chargeDose(
  filled: FilledFields<"tank" | "water" | "concentrate" | "strength">,
  { log }: LogContext,
): ChargeDose {
  const chosen = (["tank", "water", "concentrate", "strength"] as const).map((id) => [id, filled.text(id)] as const);
  const bath = draftedRow(log, "baths", Object.fromEntries(chosen));
  return {
    volume: bath.number("workingVolume"),
    base: bath.answer("baseDose"),
    forHardness: extra(bath, "hardnessDose", {
      ofWater: "the water's hardness is not in the log",
      ofConcentrate: "the concentrate's hardness capacity is not in the log",
    }),
    forAlkalinity: extra(bath, "alkalinityDose", {
      ofWater: "the water's alkalinity is not in the log",
      ofConcentrate: "the concentrate's alkali strength is not in the log",
    }),
    planned: bath.number("plannedDose"),
  };
}

const smallMeasure: Readonly<Record<UnitSystem, readonly [from: string, to: string]>> = {
  US: ["US gal", "US fl oz"],
  metric: ["L", "mL"],
  imperial: ["imperial gal", "imperial fl oz"],
};

/** "4.18 gal (534.8 US fl oz)": the big measure and the jug's. */
export function inJugs(value: number, system: UnitSystem): string {
  const [from, to] = smallMeasure[system];
  const small = askNumber(unitConvert, { value, from, to });
  return `${amount(value)} ${volumeWords[system]}${small.known ? ` (${figure(small.value, 1)} ${to})` : ""}`;
}

const colonRatio = /^\s*(\d+(?:[.,]\d+)?)\s*:\s*(\d+(?:[.,]\d+)?)\s*$/;

/** A ratio with a colon has two readings; the form says which one it took and what the other would be. */
export function bothReadings(strength: string, volume: number, dose: number, system: UnitSystem): readonly Finding[] {
  const parts = colonRatio.exec(strength);
  if (parts === null) return [];
  const [, one = "", other = ""] = parts;
  const inBath = askNumber(doseFunction, { volume, rate: `${one} in ${other}`, system });
  const unit = volumeWords[system];
  const otherwise = inBath.known ? ` ${one} in ${other} would be ${amount(inBath.value)} ${unit}.` : "";
  return [
    {
      tone: "watch",
      text: `${strength.trim()} is read as ${one}+${other}, ${one} part and ${other} parts of water: ${amount(dose)} ${unit}.${otherwise}`,
    },
  ];
}

function extraFinding(name: string, answer: Answer<number> | undefined, system: UnitSystem): readonly Finding[] {
  if (answer === undefined) return [];
  if (!answer.known)
    return [{ tone: "watch", text: `Extra for ${name}: not known, ${answer.why}.`.replace(/\.\.$/, ".") }];
  return [
    {
      tone: "plain",
      text:
        answer.value === 0
          ? `Extra for ${name}: none.`
          : `Extra for ${name}: ${amount(answer.value)} ${volumeWords[system]}.`,
    },
  ];
}

/** What the charge form says while it is filled in. `reached`: the strength of what goes in now, as the bath's row will say it. */
export function doseFindings(
  filled: FilledFields<DoseKey | "concentrateAmount">,
  reached: string | undefined,
  context: LogContext,
): readonly Finding[] {
  const { system } = context;
  const dose = chargeDose(filled, context);
  const strength = filled.text("strength");
  if (dose.volume === undefined) return [];
  const findings: Finding[] = [
    { tone: "plain", text: `Working volume ${amount(dose.volume)} ${volumeWords[system]}.` },
  ];
  if (dose.base?.known !== true || strength === undefined) return findings;
  findings.push({ tone: "plain", text: `Dose for ${strength.trim()}: ${inJugs(dose.base.value, system)}.` });
  findings.push(...bothReadings(strength, dose.volume, dose.base.value, system));
  findings.push(
    ...extraFinding("hardness", dose.forHardness, system),
    ...extraFinding("alkalinity", dose.forAlkalinity, system),
  );
  if (dose.planned !== undefined)
    findings.push({ tone: "good", text: `Planned dose in all: ${inJugs(dose.planned, system)}.` });
  const now = filled.number("concentrateAmount");
  if (now !== undefined && now > 0 && dose.planned !== undefined) {
    const left = dose.planned - now;
    const rest =
      left > 0.005 ? ` ${amount(left)} ${volumeWords[system]} of the plan is left for after the bench test.` : "";
    if (reached !== undefined)
      findings.push({
        tone: "plain",
        text: `${amount(now)} ${volumeWords[system]} now makes ${reached}.${rest}`,
      });
  }
  return findings;
}
