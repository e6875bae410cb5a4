import { findRow, lastReadingOf, rowFacts, type RowFacts } from "../../joblog/bath-facts.ts";
import { volume as volumeUnit } from "../../joblog/units-of.ts";
import { amount as amountFigure, figure, money, ph as phFigure } from "../fields/figures.ts";
import { askNumber } from "../store/ask.ts";
import { bathFacts } from "./bath-values.ts";
import { alkaliCaution } from "./cautions.ts";
import type { Draft, EntryContext, EntryForm, FilledFields, Finding, Meaning } from "./entry-form.ts";
import { field } from "./fields-of.ts";
import { inJugs } from "./charge-dose.ts";
import { judgeRecovery } from "./judge-reading.ts";
import { nextIds } from "./next-id.ts";
import { unreadTopUp } from "./reading-entry.ts";

const purposesOf: Readonly<Record<string, readonly string[]>> = {
  concentrate: ["top-up", "opening", "corrective"],
  water: ["make-up", "opening"],
};

function proposedPurpose(kind: string, facts: RowFacts | undefined): string {
  if (kind === "water") return "make-up";
  return facts?.number("baseline") === undefined ? "opening" : "top-up";
}

/** The first addition of the last reading, or what is missing of the planned opening dose. */
function proposedAmount(kind: string, purpose: string, facts: RowFacts | undefined, context: EntryContext, bath: string): string {
  if (kind !== "concentrate" || facts === undefined) return "";
  if (purpose === "opening") {
    const left = (facts.number("plannedDose") ?? 0) - (facts.number("openingDose") ?? 0);
    return left > 0.0005 ? figure(left, 3) : "";
  }
  const last = lastReadingOf(context.log, bath);
  const first = last === undefined || unreadTopUp(context.log, bath) !== undefined ? undefined : rowFacts(last).number("firstAddition");
  return purpose === "top-up" && first !== undefined ? figure(first, 2) : "";
}

function costFinding(amount: number, filled: FilledFields, facts: RowFacts, context: EntryContext): readonly Finding[] {
  const water = filled.text("kind") === "water";
  const key = water ? (filled.text("water") ?? facts.text("water")) : facts.text("concentrate");
  const row = key === undefined ? undefined : findRow(context.log, water ? "waters" : "concentrates", water ? "water" : "concentrate", key);
  const price = row === undefined ? undefined : rowFacts(row).number(water ? "price" : "unitPrice");
  if (price === undefined) return [];
  const payer = filled.text("account") === "shop" ? "the shop's own account" : "claims";
  return [{ tone: "plain", text: `Cost ${money(amount * price)}, to ${payer}.` }];
}

function concentrateFindings(amount: number, filled: FilledFields, facts: RowFacts, context: EntryContext): readonly Finding[] {
  const { system } = context;
  const opening = facts.number("openingDose");
  const volume = facts.number("workingVolume");
  if (filled.text("purpose") === "opening") {
    const total = (opening ?? 0) + amount;
    const reached = volume === undefined ? undefined : askNumber("STRENGTHOF", total, volume, "parts");
    const strength = reached?.known === true ? ` makes 1+${figure(reached.value, 1)}` : "";
    return [
      { tone: "good", text: `Opening dose in all: ${inJugs(total, system)}${strength}.` },
      { tone: "watch", text: "New concentrate: test every surface again before the baseline." },
    ];
  }
  if (opening === undefined) return [];
  const share = ((facts.number("topUpTotal") ?? 0) + amount) / opening;
  const findings: Finding[] = [{ tone: "plain", text: `${inJugs(amount, system)}. With it, top-ups come to ${figure(share * 100, 0)}% of the opening dose.` }];
  if (amount > opening) findings.push({ tone: "act", text: `That is more than the whole opening dose of ${amountFigure(opening)} ${volumeUnit[system]} at once. Add a part, mix, read.` });
  return findings;
}

function waterFindings(amount: number, filled: FilledFields, facts: RowFacts, { log, system }: EntryContext): readonly Finding[] {
  const findings: Finding[] = [{ tone: "plain", text: "Water alone is right for what evaporated. Dragged out or drained solution took concentrate with it: read, and top up if due." }];
  const water = findRow(log, "waters", "water", filled.text("water") ?? facts.text("water") ?? "");
  const concentrate = findRow(log, "concentrates", "concentrate", facts.text("concentrate") ?? "");
  const alkalinity = water === undefined ? undefined : rowFacts(water).number("alkalinity");
  const strength = concentrate === undefined ? undefined : rowFacts(concentrate).number("alkalinityStrength");
  if (alkalinity === undefined || strength === undefined) return findings;
  const eaten = askNumber("ALKALINITYDOSE", amount, alkalinity, strength, system);
  if (eaten.known && eaten.value >= 0.01) {
    findings.push({ tone: "watch", text: `The alkalinity of this water uses up ${amountFigure(eaten.value)} ${volumeUnit[system]} of concentrate.` });
  }
  return findings;
}

function findingsOf(filled: FilledFields, context: EntryContext): readonly Finding[] {
  const facts = bathFacts(context.log, filled.text("bath"));
  const amount = filled.number("amount");
  if (facts === undefined || amount === undefined) return [];
  const concentrate = filled.text("kind") === "concentrate";
  const after = filled.number("phAfter");
  return [
    ...(concentrate ? concentrateFindings(amount, filled, facts, context) : waterFindings(amount, filled, facts, context)),
    ...costFinding(amount, filled, facts, context),
    ...(concentrate && after !== undefined ? judgeRecovery(facts, after, context) : []),
    ...(concentrate && after === undefined && filled.text("purpose") !== "opening" ? [{ tone: "plain" as const, text: "Mix, then take a reading: it fills in the pH after." }] : []),
  ];
}

function meaning(filled: FilledFields, context: EntryContext): Meaning {
  const bath = filled.text("bath");
  const amount = filled.number("amount");
  const kind = filled.text("kind");
  return {
    findings: findingsOf(filled, context),
    problems: amount === 0 ? [{ key: "amount", message: "Amount: 0 is nothing to record. Allowed: more than 0." }] : [],
    rows: [
      {
        table: "additions",
        row: {
          id: nextIds(context.log, "additions", 1)[0],
          bath,
          when: filled.number("when"),
          kind,
          purpose: filled.text("purpose"),
          amount,
          water: kind === "water" ? filled.text("water") : undefined,
          account: filled.text("account"),
          phBefore: filled.number("phBefore"),
          phAfter: filled.number("phAfter"),
          minutesMixed: filled.number("minutesMixed"),
          initials: filled.text("initials"),
          note: filled.text("note"),
        },
      },
    ],
    recorded: `${amountFigure(amount ?? 0)} ${volumeUnit[context.system]} of ${kind ?? ""} for bath ${bath ?? ""}`,
  };
}

function proposals(typed: Draft, context: EntryContext): Draft {
  const bath = typed["bath"] ?? context.bath ?? "";
  const facts = bathFacts(context.log, bath);
  const kind = typed["kind"] ?? "concentrate";
  const purpose = typed["purpose"] ?? proposedPurpose(kind, facts);
  const last = facts?.number("lastReading");
  return {
    bath,
    when: context.now,
    kind,
    purpose,
    amount: proposedAmount(kind, purpose, facts, context, bath),
    water: facts?.text("water") ?? "",
    account: purpose === "corrective" ? "shop" : "claims",
    phBefore: kind === "concentrate" && purpose !== "opening" && last !== undefined ? phFigure(last) : "",
  };
}

/** Concentrate or water that goes in after the charge. */
export const additionEntry: EntryForm = {
  id: "addition",
  title: "Top-up or make-up",
  purpose: "Concentrate or water that goes into a bath in use.",
  submit: "Record addition",
  caution: alkaliCaution,
  groups: (values, { log }) => {
    const water = values["kind"] === "water";
    return [
      {
        fields: [
          field(log, "additions", "kind"),
          field(log, "additions", "purpose", { choices: purposesOf[values["kind"] ?? ""] ?? [] }),
          field(log, "additions", "amount"),
          ...(water ? [field(log, "additions", "water")] : [field(log, "additions", "phBefore")]),
          field(log, "additions", "account", { required: true }),
          field(log, "additions", "when"),
          field(log, "additions", "bath"),
        ],
      },
      {
        legend: "More",
        folded: true,
        fields: (water ? ["initials", "note"] : ["phAfter", "minutesMixed", "initials", "note"]).map((id) => field(log, "additions", id)),
      },
    ];
  },
  proposals,
  meaning,
};
