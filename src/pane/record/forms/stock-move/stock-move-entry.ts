import { BoxCheckmarkRegular } from "@fluentui/react-icons/svg/box-checkmark";

import { findRow, rowFacts } from "../../../../advice/bath-facts.ts";
import type { FilledFields } from "../../../../advice/filled-fields.ts";
import type { Finding } from "../../../../advice/finding.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { amount, money } from "../../../../advice/wording/figures.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import { volume as volumeUnit } from "../../../../joblog/model/units-of.ts";
import type { EntryForm, Meaning } from "../../entry-form.ts";
import { field, initialsField, textsOf } from "../../fields-of.ts";
import { newRows } from "../../new-rows.ts";

function findingsOf(filled: FilledFields<ColumnId<"stockMoves">>, { log, system }: LogContext): readonly Finding[] {
  const [concentrate, moved, kind, price] = [
    filled.text("concentrate"),
    filled.number("amount"),
    filled.text("kind"),
    filled.number("price"),
  ];
  if (concentrate === undefined || moved === undefined || kind === undefined) return [];
  const row = findRow(log, "stockBalance", "concentrate", concentrate);
  const book = row === undefined ? undefined : rowFacts(row).number("book");
  const unit = volumeUnit[system];
  const worth: readonly Finding[] =
    price === undefined || kind !== "receipt" ? [] : [{ tone: "plain", text: `Worth ${money(price * moved)}.` }];
  if (kind === "count") {
    if (book === undefined) return [{ tone: "plain", text: "First count: it is the opening stock." }];
    const off = moved - book;
    return [
      {
        tone: Math.abs(off) < 0.005 ? "good" : "watch",
        text:
          Math.abs(off) < 0.005
            ? "As the book has it."
            : `${amount(Math.abs(off))} ${unit} ${off < 0 ? "less" : "more"} than the book, ${amount(book)} ${unit}.`,
      },
    ];
  }
  if (book === undefined)
    return [{ tone: "watch", text: "Never counted, so the book has no balance yet. Record a count first." }, ...worth];
  const after = kind === "receipt" ? book + moved : book - moved;
  return [
    {
      tone: after < 0 ? "act" : "plain",
      text: `By the book ${amount(after)} ${unit} after it.${after < 0 ? " Count the shelf." : ""}`,
    },
    ...worth,
  ];
}

function meaning(filled: FilledFields<ColumnId<"stockMoves">>, context: LogContext): Meaning {
  const { log } = context;
  const [concentrate, kind, moved] = [filled.text("concentrate"), filled.text("kind"), filled.number("amount")];
  const listed = concentrate === undefined || findRow(log, "stockBalance", "concentrate", concentrate) !== undefined;
  return {
    findings: findingsOf(filled, context),
    problems:
      moved === 0 && kind !== "count"
        ? [{ key: "amount", message: "Amount: 0 moves nothing. Only a count can be 0." }]
        : [],
    rows: [
      ...newRows("stockMoves", filled, context),
      ...(listed ? [] : [{ table: "stockBalance", row: { concentrate } } as const]),
    ],
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
  groups: (_values, { log }) => [
    {
      fields: [
        field(log, "stockMoves", "kind"),
        field(log, "stockMoves", "concentrate"),
        field(log, "stockMoves", "amount"),
        field(log, "stockMoves", "price"),
        field(log, "stockMoves", "when"),
        field(log, "stockMoves", "document"),
        field(log, "stockMoves", "lot"),
      ],
    },
    { legend: "More", folded: true, fields: [initialsField(log, "stockMoves"), field(log, "stockMoves", "note")] },
  ],
  proposals: (_typed, { log, now }) => {
    const keys = textsOf(log, "concentrates", "concentrate");
    return { kind: "count", when: now.slice(0, 10), concentrate: keys.length === 1 ? (keys[0] ?? "") : "" };
  },
  meaning,
};
