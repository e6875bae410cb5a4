import type { UnitSystem } from "../core/units/unit-system.ts";
import type { ColumnId } from "../joblog/formula/log-names.ts";
import type { TableId } from "../joblog/formula/log-types.ts";
import { volume as volumeWords } from "../joblog/model/units-of.ts";
import type { Answer } from "./answer.ts";
import { askNumber } from "./ask.ts";
import { findRow, type RowFacts, rowFacts } from "./bath-facts.ts";
import type { FilledFields } from "./filled-fields.ts";
import type { Finding } from "./finding.ts";
import type { LogContext } from "./log-context.ts";
import { amount, figure } from "./wording/figures.ts";

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

function rowOf<Table extends TableId>(
  context: LogContext,
  table: Table,
  column: ColumnId<Table>,
  key: string | undefined,
): RowFacts<Table> | undefined {
  const row = key === undefined ? undefined : findRow(context.log, table, column, key);
  return row === undefined ? undefined : rowFacts(row);
}

function extra(
  id: string,
  [volume, ofWater, ofConcentrate]: readonly [number, number | undefined, number | undefined],
  whatIsMissing: readonly [water: string, concentrate: string],
  rest: readonly (number | string | null)[],
): Answer<number> {
  if (ofWater === undefined) return { known: false, why: whatIsMissing[0] };
  if (ofWater === 0) return { known: true, value: 0 };
  if (ofConcentrate === undefined) return { known: false, why: whatIsMissing[1] };
  return askNumber(id, volume, ofWater, ofConcentrate, ...rest);
}

/** Works out base dose and extras for the tank, water, concentrate and strength chosen so far. */
export function chargeDose(filled: FilledFields<DoseKey>, context: LogContext): ChargeDose {
  const { system } = context;
  const volume = rowOf(context, "tanks", "tank", filled.text("tank"))?.number("workingVolume");
  const water = rowOf(context, "waters", "water", filled.text("water"));
  const concentrate = rowOf(context, "concentrates", "concentrate", filled.text("concentrate"));
  const strength = filled.text("strength");
  const base = volume === undefined || strength === undefined ? undefined : askNumber("DOSE", volume, strength, system);
  const known = volume !== undefined && water !== undefined && concentrate !== undefined;
  const forHardness = known
    ? extra(
        "HARDNESSDOSE",
        [volume, water.number("hardness"), concentrate.number("capacity")],
        ["the water's hardness is not in the log", "the concentrate's sequestering capacity is not in the log"],
        [concentrate.number("labelHardness") ?? null, system],
      )
    : undefined;
  const forAlkalinity = known
    ? extra(
        "ALKALINITYDOSE",
        [volume, water.number("alkalinity"), concentrate.number("alkalinityStrength")],
        ["the water's alkalinity is not in the log", "the concentrate's alkali strength is not in the log"],
        [system],
      )
    : undefined;
  const sum = [base, forHardness, forAlkalinity].reduce(
    (total, one) => total + (one?.known === true ? one.value : 0),
    0,
  );
  return { volume, base, forHardness, forAlkalinity, planned: base?.known === true ? sum : undefined };
}

const smallMeasure: Readonly<Record<UnitSystem, readonly [from: string, to: string]>> = {
  US: ["US gal", "US fl oz"],
  metric: ["L", "mL"],
  imperial: ["imperial gal", "imperial fl oz"],
};

/** "4.18 gal (534.8 US fl oz)": the big measure and the jug's. */
export function inJugs(value: number, system: UnitSystem): string {
  const [from, to] = smallMeasure[system];
  const small = askNumber("UNITCONVERT", value, from, to);
  return `${amount(value)} ${volumeWords[system]}${small.known ? ` (${figure(small.value, 1)} ${to})` : ""}`;
}

const colonRatio = /^\s*(\d+(?:[.,]\d+)?)\s*:\s*(\d+(?:[.,]\d+)?)\s*$/;

/** A ratio with a colon has two readings; the form says which one it took and what the other would be. */
export function bothReadings(strength: string, volume: number, dose: number, system: UnitSystem): readonly Finding[] {
  const parts = colonRatio.exec(strength);
  if (parts === null) return [];
  const [, one = "", other = ""] = parts;
  const inBath = askNumber("DOSE", volume, `${one} in ${other}`, system);
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

/** What the charge form says while it is filled in. */
export function doseFindings(
  filled: FilledFields<DoseKey | "concentrateAmount">,
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
    const reached = askNumber("STRENGTHOF", now, dose.volume, "parts");
    const left = dose.planned - now;
    const rest =
      left > 0.005 ? ` ${amount(left)} ${volumeWords[system]} of the plan is left for after the bench test.` : "";
    if (reached.known)
      findings.push({
        tone: "plain",
        text: `${amount(now)} ${volumeWords[system]} now makes 1+${figure(reached.value, 1)}.${rest}`,
      });
  }
  return findings;
}
