import { inJugs } from "../../../../advice/amounts/charge-dose.ts";
import { roomFindings } from "../../../../advice/amounts/tank-room.ts";
import { findRow, rowFacts } from "../../../../advice/bath-facts.ts";
import { bathFacts } from "../../../../advice/bath-values.ts";
import { draftedLog, type DraftedRow } from "../../../../advice/drafted-row.ts";
import type { FilledFields } from "../../../../advice/filled-fields.ts";
import type { Finding } from "../../../../advice/finding.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { baselineFault } from "../../../../advice/readings/baseline-written.ts";
import { judgeRecovery } from "../../../../advice/readings/judge-recovery.ts";
import { amount as amountFigure, figure, money } from "../../../../advice/wording/figures.ts";
import type { LogRow } from "../../../../joblog/model/definition.ts";
import { volume as volumeUnit } from "../../../../joblog/model/units-of.ts";
import type { AdditionKey } from "./strength-raise.ts";

/** Whose cost it is; a bath that had rework and nothing else is the shop's, whatever its rows say. */
function payerOf(addition: DraftedRow<"additions">, bath: DraftedRow<"baths">): string {
  const account = addition.text("account");
  if (account === undefined) return "to no account yet";
  if (account === "shop") return "to the shop's own account";
  return bath.number("reworkOnly") === 1 ? "to the shop: the bath had rework and nothing else" : "to claims";
}

function costFinding(addition: DraftedRow<"additions">, bath: DraftedRow<"baths">): readonly Finding[] {
  const cost = addition.number("cost");
  return cost === undefined ? [] : [{ tone: "plain", text: `Cost ${money(cost)}, ${payerOf(addition, bath)}.` }];
}

/** `bath`: as its row will stand with the addition. */
function concentrateFindings(
  amount: number,
  addition: DraftedRow<"additions">,
  bath: DraftedRow<"baths">,
  { system }: LogContext,
): readonly Finding[] {
  const opening = bath.number("openingDose");
  if (addition.text("purpose") === "opening") {
    const reached = bath.text("strengthReached");
    const strength = reached === undefined ? "" : ` makes ${reached}`;
    return [
      { tone: "good", text: `Opening dose in all: ${inJugs(opening ?? amount, system)}${strength}.` },
      { tone: "watch", text: "New concentrate: test every surface again before the baseline." },
    ];
  }
  if (opening === undefined) return [];
  const counts =
    addition.text("purpose") === "top-up"
      ? "With it, top-ups come to"
      : "It does not count among the top-ups, which come to";
  const findings: Finding[] = [
    {
      tone: "plain",
      text: `${inJugs(amount, system)}. ${counts} ${figure(((bath.number("topUpTotal") ?? 0) / opening) * 100, 0)}% of the opening dose.`,
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

/** What the top-up form says of the addition's row while it is filled in. */
export function additionFindings(row: LogRow<"additions">, context: LogContext): readonly Finding[] {
  const { log } = context;
  const ofBath = findRow(log, "baths", "bath", String(row["bath"] ?? ""));
  if (ofBath === undefined || typeof row["amount"] !== "number") return [];
  const after = draftedLog(
    log,
    [{ table: "additions", row }],
    (table, cells) => cells === ofBath.cells && table === "baths",
  );
  const addition = after.added("additions");
  const bath = after.standing("baths", ofBath);
  const isRead = addition.number("phAfter") !== undefined;
  const fault = addition.text("purpose") === "opening" ? undefined : baselineFault(rowFacts(ofBath), context.system);
  return [
    ...(fault === undefined ? [] : [{ tone: "watch" as const, text: fault.text }]),
    ...concentrateFindings(row["amount"], addition, bath, context),
    ...roomFindings(addition, context),
    ...costFinding(addition, bath),
    ...(isRead ? judgeRecovery(rowFacts(ofBath), addition, context) : []),
    ...(!isRead && addition.text("purpose") !== "opening"
      ? [{ tone: "plain" as const, text: "Mix, then take a reading: it fills in the pH after." }]
      : []),
  ];
}
