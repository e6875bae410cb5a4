import { joined } from "../../formula/arithmetic.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { all, is, isBlank, isFilled, isNoNumber, isNumber, isOver } from "../../formula/conditions.ts";
import { sumWhere } from "../../formula/criteria.ts";
import type { Expression } from "../../formula/expression.ts";
import { columnsOf, dateInput, keyInput, moneyInput, textInput, wordInput } from "../../model/columns.ts";
import type { TableDefinition } from "../../model/definition.ts";
import { between } from "../../model/units-of.ts";
import { accounts, costKinds } from "../../model/words.ts";
import { bathRow } from "../baths/bath-row.ts";
import { claimRow } from "../job/claim-row.ts";
import { costLineStatement } from "../statement/statement-keys.ts";
import { gapLine } from "./gap-line.ts";

const { computed, helper } = columnsOf<"costLines">();

export const costLines: TableDefinition = {
  id: "costLines",
  name: "CostLines",
  entry: { word: "Cost line", letter: "C", about: ["what"] },
  caption: "Cost lines: not concentrate and water, they come from Additions by themselves",
  emptyRows: 1,
  newPage: true,
  columns: [
    textInput({ id: "id", label: "Line", width: 14, help: "Running number." }),
    keyInput({
      id: "bath",
      label: "Bath",
      width: 14,
      from: ["baths", "bath"],
      help: "A line without a bath is shared out with none.",
    }),
    dateInput({ id: "date", label: "Date", width: 12, help: "Of the document." }),
    textInput({
      id: "what",
      label: "What",
      width: 19,
      required: true,
      help: "Labor, electricity, filter bags, disposal.",
    }),
    textInput({
      id: "document",
      label: "Document",
      width: 14,
      help: "Invoice, time sheet or meter reading that proves it.",
    }),
    moneyInput({
      id: "amount",
      label: "Amount",
      width: 11,
      required: true,
      limits: between(-1_000_000, 1_000_000),
      help: "A credit is negative.",
    }),
    wordInput({
      id: "account",
      label: "Account",
      words: accounts,
      width: 9,
      help: "The shop's own mistakes go to the shop, never to a claim.",
    }),
    wordInput({
      id: "kind",
      label: "Kind",
      words: costKinds,
      width: 10,
      help: "What it was for; blank counts as other. The claim statement and the journal go by it.",
    }),
    keyInput({
      id: "claim",
      label: "One claim alone",
      width: 14,
      from: ["claims", "claim"],
      help: "Where one claim pays the whole line; blank means that the claims of the bath share it.",
    }),
    computed(
      {
        id: "check",
        label: "Check",
        type: "text",
        width: 26,
        help: "Why nobody is charged with the line; blank where someone is.",
      },
      ({ amount, account, bath, bathRow, noPayer, waterTwice, what }) =>
        blankIf(
          [all(isBlank(amount), isBlank(what))],
          when(isNoNumber(amount), "amount is no number")
            .when(isBlank(account), "account missing")
            .when(all(isFilled(bath), isBlank(bathRow)), "bath not on Baths")
            .when(isFilled(waterTwice), waterTwice)
            .otherwise(noPayer),
        ),
    ),
    helper(
      { id: "noPayer", label: "No payer", type: "text", width: 16, help: "Which claim or bath the line lacks." },
      ({ account, bath, claim, claimRow }) =>
        when(is(account, "shop"), "")
          .when(all(isBlank(bath), isBlank(claim)), when(isBlank(account), "").otherwise("bath missing"))
          .when(all(isFilled(claim), isBlank(claimRow)), "claim not on Job")
          .otherwise(""),
    ),
    helper(
      {
        id: "waterTwice",
        label: "Water in Additions",
        type: "text",
        width: 20,
        help: "For a line of water of a bath whose water is priced already.",
      },
      ({ bath, kind }, { additions }) => {
        const priced = sumWhere(additions, "cost", { bath, kind: "water" });
        return when(
          all(is(kind, "water"), isFilled(bath), isOver(priced, 0)),
          "water is priced in Additions too",
        ).otherwise("");
      },
    ),
    bathRow,
    claimRow,
    helper(
      {
        id: "shared",
        label: "To share out",
        type: "money",
        format: "#,##0.00",
        width: 11,
        help: "What the claims of its bath share.",
      },
      ({ account, amount, claim }) =>
        when(all(isNumber(amount), is(account, "claims"), isBlank(claim)), amount).otherwise(""),
    ),
    helper(
      {
        id: "alone",
        label: "Alone",
        type: "money",
        format: "#,##0.00",
        width: 11,
        help: "What one claim pays of it, alone.",
      },
      ({ account, amount, claimRow }) =>
        when(all(isNumber(amount), is(account, "claims"), isNumber(claimRow)), amount).otherwise(""),
    ),
    helper(
      { id: "gap", label: "Not placed", type: "text", width: 26, help: "Line and why nobody is charged with it." },
      ({ check, id, what }): Expression =>
        blankIf([isBlank(check)], joined(when(isBlank(id), what).otherwise(id), ": ", check)),
    ),
    gapLine<"costLines">(({ gap }, log) => [gap, log.costLines.gap]),
    costLineStatement,
  ],
  signals: ["amount", "account", "bath", "claim", "water"].map((beginning) => ({
    column: "check",
    when: { startsWith: beginning },
    look: "act",
  })),
};
