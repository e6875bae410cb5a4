import { BoxCheckmarkRegular } from "@fluentui/react-icons/svg/box-checkmark";

import { findRow } from "../../../../advice/bath-facts.ts";
import { type DraftedRow, draftedRow } from "../../../../advice/drafted-row.ts";
import type { FilledFields } from "../../../../advice/filled-fields.ts";
import type { Finding } from "../../../../advice/finding.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { amount, figure, money } from "../../../../advice/wording/figures.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import { volume as volumeUnit } from "../../../../joblog/model/units-of.ts";
import type { EntryForm, Meaning } from "../../entry-form.ts";
import { field, initialsField, textsOf } from "../../fields-of.ts";
import { newRow } from "../../new-rows.ts";
import { noMoveProblems } from "./stock-move-problems.ts";

/** What the line makes of the average cost. */
function averageFindings(kind: string, move: DraftedRow<"stockMoves">): readonly Finding[] {
  const [average, before] = [move.number("averageWouldBe"), move.number("averageBefore")];
  if (kind === "receipt" && move.number("price") === undefined)
    return [
      {
        tone: "watch",
        text: "Without a price the average cost stays as it is, and the month end is missing the value.",
      },
    ];
  if (average === undefined) return [];
  const was = kind === "receipt" && before !== undefined ? `, was ${figure(before, 4, 2)}` : "";
  return [{ tone: "plain", text: `Average cost from here on ${figure(average, 4, 2)}${was}. It is written down.` }];
}

function findingsOf(move: DraftedRow<"stockMoves">, { system }: LogContext): readonly Finding[] {
  const [kind, value] = [move.text("kind"), move.number("value")];
  if (move.text("concentrate") === undefined || move.number("amount") === undefined || kind === undefined) return [];
  const unit = volumeUnit[system];
  const book = move.number("book");
  if (kind === "count") {
    const off = move.number("variance");
    if (off === undefined || book === undefined)
      return [{ tone: "plain", text: "First count: it is the opening stock." }, ...averageFindings(kind, move)];
    return [
      {
        tone: Math.abs(off) < 0.005 ? "good" : "watch",
        text:
          Math.abs(off) < 0.005
            ? "As the book has it."
            : `${amount(Math.abs(off))} ${unit} ${off < 0 ? "less" : "more"} than the book, ${amount(book)} ${unit}.${value === undefined ? "" : ` Worth ${money(Math.abs(value))}, ${off < 0 ? "a loss" : "a gain"} of the shop.`}`,
      },
    ];
  }
  const worth: readonly Finding[] = [
    ...(value === undefined ? [] : [{ tone: "plain", text: `Worth ${money(value)}.` } as const]),
    ...averageFindings(kind, move),
  ];
  if (book === undefined || move.number("countBefore") === 0)
    return [{ tone: "watch", text: "Never counted, so the book has no balance yet. Record a count first." }, ...worth];
  return [
    {
      tone: book < 0 ? "act" : "plain",
      text: `By the book ${amount(book)} ${unit} after it.${book < 0 ? " Count the shelf." : ""}`,
    },
    ...worth,
  ];
}

function meaning(filled: FilledFields<ColumnId<"stockMoves">>, context: LogContext): Meaning {
  const { log } = context;
  const [concentrate, kind] = [filled.text("concentrate"), filled.text("kind")];
  const listed = concentrate === undefined || findRow(log, "stockBalance", "concentrate", concentrate) !== undefined;
  const { table, row } = newRow("stockMoves", filled, context);
  const move = draftedRow(log, table, row);
  const added = { table, row: { ...row, averageAfter: move.number("averageWouldBe") } };
  return {
    findings: findingsOf(move, context),
    problems: noMoveProblems(filled),
    rows: [added, ...(listed ? [] : [{ table: "stockBalance", row: { concentrate } } as const])],
    recorded: `${kind ?? "stock line"} of ${concentrate ?? ""}`,
  };
}

/** What came, what stands on the shelf, what left it other than into a bath. */
export const stockMoveEntry: EntryForm<"stock move"> = {
  id: "stock move",
  title: "Stock",
  icon: BoxCheckmarkRegular,
  needs: "log",
  from: "shop",
  purpose: "A count, a receipt, or what left the shelf other than into a bath.",
  submit: "Record stock line",
  groups: (values, { log }) => [
    {
      fields: [
        field(log, "stockMoves", "kind"),
        field(log, "stockMoves", "concentrate"),
        field(log, "stockMoves", "amount"),
        field(log, "stockMoves", "price"),
        field(log, "stockMoves", "when"),
        field(log, "stockMoves", "document"),
        field(log, "stockMoves", "lot"),
        ...(values["kind"] === "receipt" ? [field(log, "stockMoves", "expiry", { anyTime: true })] : []),
      ],
    },
    {
      legend: "More details",
      folded: true,
      fields: [initialsField(log, "stockMoves"), field(log, "stockMoves", "note")],
    },
  ],
  proposals: (_typed, { log, now }) => {
    const keys = textsOf(log, "concentrates", "concentrate");
    return { kind: "count", when: now, concentrate: keys.length === 1 ? (keys[0] ?? "") : "" };
  },
  meaning,
};
