import { BoxRegular } from "@fluentui/react-icons/svg/box";

import { findRow } from "../../../../advice/bath-facts.ts";
import { completed, draftedLog, type DraftedRow } from "../../../../advice/drafted-row.ts";
import type { FieldProblem, FilledFields } from "../../../../advice/filled-fields.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import type { Fresh } from "../../../../joblog/evaluate/evaluated-log.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import type { LogRow, NewRow } from "../../../../joblog/model/definition.ts";
import type { SnapshotRow } from "../../../../joblog/model/log-snapshot.ts";
import { cellsOf } from "../../cells-of.ts";
import type { Draft, EntryField, EntryForm, Meaning } from "../../entry-form.ts";
import { field, textsOf } from "../../fields-of.ts";
import { newRow } from "../../new-rows.ts";
import { itemFindings, type ListedItem } from "./item-findings.ts";
import { bathDoubts } from "./item-hazards.ts";

const earlierKey = "earlier";

type ItemKey = ColumnId<"items"> | typeof earlierKey;

const between = " · ";

const nameOf = ({ cells }: SnapshotRow<"items">): string =>
  [cells.id, cells.item].map((part) => String(part ?? "")).join(between);

const pendingItems = ({ log }: LogContext): readonly SnapshotRow<"items">[] =>
  log.rows.items.filter((row) => row.cells.outcome === undefined && row.cells.id !== undefined);

/** The item in the list that the form is to complete. */
function earlierItem(chosen: string | undefined, { log }: LogContext): SnapshotRow<"items"> | undefined {
  const [id = ""] = (chosen ?? "").split(between);
  return id === "" ? undefined : findRow(log, "items", "id", id);
}

const what = ["claim", "room", "item", "quantity", "material", "condition", "pre1978"] as const;
const became = ["route", "bath", "outcome", "reason", "reasonText"] as const;
const more = ["replacementValue", "restoreCost", "photo", "note"] as const;

type ItemColumn = (typeof what | typeof became | typeof more)[number];

function itemField(id: ItemColumn, { log }: LogContext): EntryField {
  const offered =
    id === "room" || id === "material" || id === "condition" ? { suggestions: textsOf(log, "items", id) } : {};
  return field(log, "items", id, offered);
}

/**
 * The item as it will stand, a row of the list, whose own cells count first, or a new one; and what the log's own count
 * of its claim comes to with it, whether or not somebody has counted the claim in.
 */
function onList(row: SnapshotRow<"items"> | undefined, filled: FilledFields<ItemKey>, context: LogContext): ListedItem {
  const { log } = context;
  const counting = (claim: LogRow<"items">["claim"]): NewRow => ({ table: "itemCounts", row: { claim } });
  const anew: Fresh = (table) => table === "items";
  if (row === undefined) {
    const added = newRow("items", filled, context);
    const drafted = draftedLog(log, [added, counting(added.row.claim)], anew);
    return { item: drafted.added("items"), count: drafted.added("itemCounts") };
  }
  const { cells } = row;
  const blank = [...became, ...more].filter((id) => cells[id] === undefined);
  const after = completed(log, "items", row, cellsOf(filled, blank));
  const drafted = draftedLog(after.log, [counting(after.row.cells.claim)], anew);
  return { item: drafted.standing("items", after.row), count: drafted.added("itemCounts") };
}

function reasonProblems(item: DraftedRow<"items">, earlier: boolean): readonly FieldProblem[] {
  const problems: FieldProblem[] = [];
  if (item.text("outcome") === "not restorable" && item.text("reason") === undefined)
    problems.push({
      key: "reason",
      message: "Reason code: blank. A piece not restorable needs one: it is what the adjuster reads first.",
    });
  if (earlier && item.text("outcome") === undefined)
    problems.push({
      key: "outcome",
      message: "Outcome: blank. Say what became of the item, or choose no item of the list.",
    });
  if (item.text("outcome") === "restored" && (item.text("route") ?? "none") === "none")
    problems.push({
      key: "route",
      message: "Route: a restored piece went through a bath, by hand or to a specialist. Say which.",
    });
  return problems;
}

function meaning(filled: FilledFields<ItemKey>, context: LogContext): Meaning {
  const row = earlierItem(filled.text(earlierKey), context);
  const listed = onList(row, filled, context);
  const { item } = listed;
  const key = row?.cells.id;
  const common = {
    findings: itemFindings(listed, context),
    problems: reasonProblems(item, row !== undefined),
    doubts: filled.text("route") === "bath" ? bathDoubts(item, context) : [],
  };
  if (row !== undefined && key !== undefined) {
    return {
      ...common,
      rows: [],
      fills: [{ table: "items", key: String(key), cells: cellsOf(filled, [...became, ...more]) }],
      recorded: `outcome of item ${nameOf(row)}`,
    };
  }
  return {
    ...common,
    rows: [newRow("items", filled, context)],
    recorded: `${filled.text("item") ?? "item"} of claim ${filled.text("claim") ?? ""}`,
  };
}

function fieldsLeft(
  ids: readonly ItemColumn[],
  row: SnapshotRow<"items"> | undefined,
  values: Draft,
  context: LogContext,
): readonly EntryField[] {
  const outcome = values["outcome"] ?? "";
  const held: SnapshotRow<"items">["cells"] = row?.cells ?? {};
  const route = values["route"] ?? String(held.route ?? "");
  return ids
    .filter((id) => held[id] === undefined)
    .filter((id) => id !== "bath" || route === "bath")
    .filter(
      (id) =>
        !id.startsWith("reason") ||
        (outcome !== "" && outcome !== "restored") ||
        ["hand", "specialist", "none"].includes(route),
    )
    .map((id) => itemField(id, context));
}

/** A piece as it comes in, or what became of one that stands in the list. */
export const itemEntry: EntryForm<"item"> = {
  id: "item",
  title: "Item",
  icon: BoxRegular,
  needs: "log",
  series: true,
  purpose: "A piece that came in, where it goes, and what became of it.",
  submit: "Record item",
  groups: (values, context) => {
    const pending = pendingItems(context);
    const row = earlierItem(values[earlierKey], context);
    const left = (ids: readonly ItemColumn[]): readonly EntryField[] => fieldsLeft(ids, row, values, context);
    return [
      ...(pending.length === 0
        ? []
        : [
            {
              fields: [
                field(context.log, "items", "id", {
                  key: earlierKey,
                  label: "Item already in the list",
                  required: false,
                  choices: pending.map(nameOf),
                }),
              ],
            },
          ]),
      ...(row === undefined ? [{ legend: "What came in", fields: left(what) }] : []),
      { legend: "What becomes of it", fields: left(became) },
      { legend: "More details", folded: true, fields: left(more) },
    ];
  },
  proposals: (typed, context) => {
    const last = context.log.rows.items.at(-1)?.cells;
    const { claims } = context.log.rows;
    const only = claims.length === 1 ? claims[0]?.cells.claim : undefined;
    const claim = typed["claim"] ?? String(last?.claim ?? only ?? "");
    const bath = typed["route"] === "bath" ? (context.bath ?? "") : "";
    return { claim, room: claim === last?.claim ? String(last.room ?? "") : "", bath };
  },
  meaning,
};
