import { askNumber } from "../../../../advice/ask.ts";
import { findRow, type RowFacts, rowFacts } from "../../../../advice/bath-facts.ts";
import { bathFacts } from "../../../../advice/bath-values.ts";
import { inJugs } from "../../../../advice/charge-dose.ts";
import type { FilledFields } from "../../../../advice/filled-fields.ts";
import type { Finding } from "../../../../advice/finding.ts";
import { judgeRecovery } from "../../../../advice/judge-recovery.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { amount as amountFigure, figure, money } from "../../../../advice/wording/figures.ts";
import { volume as volumeUnit } from "../../../../joblog/model/units-of.ts";
import type { AdditionKey } from "./strength-raise.ts";

function costFinding(
  amount: number,
  filled: FilledFields<AdditionKey>,
  facts: RowFacts<"baths">,
  context: LogContext,
): readonly Finding[] {
  const row = findRow(context.log, "concentrates", "concentrate", facts.text("concentrate") ?? "");
  const price = row === undefined ? undefined : rowFacts(row).number("unitPrice");
  if (price === undefined) return [];
  const payer = filled.text("account") === "shop" ? "the shop's own account" : "claims";
  return [{ tone: "plain", text: `Cost ${money(amount * price)}, to ${payer}.` }];
}

function concentrateFindings(
  amount: number,
  filled: FilledFields<AdditionKey>,
  facts: RowFacts<"baths">,
  context: LogContext,
): readonly Finding[] {
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
  const total = (facts.number("topUpTotal") ?? 0) + (filled.text("purpose") === "top-up" ? amount : 0);
  const counts =
    filled.text("purpose") === "top-up"
      ? "With it, top-ups come to"
      : "It does not count among the top-ups, which come to";
  const findings: Finding[] = [
    {
      tone: "plain",
      text: `${inJugs(amount, system)}. ${counts} ${figure((total / opening) * 100, 0)}% of the opening dose.`,
    },
  ];
  if (amount > opening)
    findings.push({
      tone: "act",
      text: `More at once than the whole opening dose of ${amountFigure(opening)} ${volumeUnit[system]}: better a part, mix, read.`,
    });
  return findings;
}

/** Asked where more goes in at once than opened the bath. */
export function amountDoubts(filled: FilledFields<AdditionKey>, { log, system }: LogContext): readonly string[] {
  const opening = bathFacts(log, filled.text("bath"))?.number("openingDose");
  const amount = filled.number("amount");
  if (opening === undefined || amount === undefined || amount <= opening || filled.text("purpose") === "opening")
    return [];
  return [
    `${amountFigure(amount)} ${volumeUnit[system]} at once is more than the whole opening dose of ${amountFigure(opening)} ${volumeUnit[system]}. Did so much go in?`,
  ];
}

/** What the top-up form says while it is filled in. */
export function additionFindings(filled: FilledFields<AdditionKey>, context: LogContext): readonly Finding[] {
  const facts = bathFacts(context.log, filled.text("bath"));
  const amount = filled.number("amount");
  if (facts === undefined || amount === undefined) return [];
  const after = filled.number("phAfter");
  return [
    ...concentrateFindings(amount, filled, facts, context),
    ...costFinding(amount, filled, facts, context),
    ...(after === undefined
      ? []
      : judgeRecovery(facts, { added: amount, before: filled.number("phBefore"), after }, context)),
    ...(after === undefined && filled.text("purpose") !== "opening"
      ? [{ tone: "plain" as const, text: "Mix, then take a reading: it fills in the pH after." }]
      : []),
  ];
}
