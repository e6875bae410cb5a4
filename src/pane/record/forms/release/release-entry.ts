import { DocumentCheckmarkRegular } from "@fluentui/react-icons/svg/document-checkmark";

import { tankOf } from "../../../../advice/amounts/tank-limits.ts";
import { lastReadingOf, rowFacts, rowsOfBath } from "../../../../advice/bath-facts.ts";
import { bathFacts, bathIds } from "../../../../advice/bath-values.ts";
import type { FilledFields } from "../../../../advice/filled-fields.ts";
import type { Finding } from "../../../../advice/finding.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { isSpent, openRelease, releaseFacts } from "../../../../advice/release-facts.ts";
import { figure } from "../../../../advice/wording/figures.ts";
import { serialOf, shortMoment } from "../../../../advice/wording/moments.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import type { SnapshotRow } from "../../../../joblog/model/log-snapshot.ts";
import { cellsOf } from "../../cells-of.ts";
import type { Draft, EntryForm, Meaning } from "../../entry-form.ts";
import { newRow } from "../../new-rows.ts";
import { changeOut, release } from "../../step-forms.ts";
import { acidDoubts } from "./release-doubts.ts";
import { releaseFindings } from "./release-findings.ts";
import { allColumns, releaseGroups } from "./release-groups.ts";
import { releaseProblems } from "./release-problems.ts";

/** An earlier treatment that led to no release is named, so that nobody takes this one for its continuation. */
function afterSpent(
  row: SnapshotRow<"releases"> | undefined,
  bath: string | undefined,
  context: LogContext,
): readonly Finding[] {
  const spent =
    row === undefined && bath !== undefined
      ? rowsOfBath(context.log, "releases", bath).filter(isSpent).at(-1)
      : undefined;
  if (spent === undefined) return [];
  const { text } = rowFacts(spent);
  return [
    {
      tone: "watch",
      text: `${text("id") ?? "The treatment before"} stays as it is (${text("state") ?? "not released"}). This is a further treatment: read pH and alkalinity again, and have it analyzed again.`,
    },
  ];
}

/** A bath that still works is closed first, so that nothing is recorded in it afterward. */
function gate(bath: string | undefined, context: LogContext): Meaning["blocked"] {
  const facts = bathFacts(context.log, bath);
  return facts === undefined || facts.number("closed") !== undefined
    ? undefined
    : {
        why: "This bath is still open in the log. Close it first; then neutralize and release it.",
        first: changeOut,
      };
}

function meaning(filled: FilledFields<ColumnId<"releases">>, context: LogContext): Meaning {
  const bath = filled.text("bath");
  const row = openRelease(context, bath);
  const release = releaseFacts(row, bath, filled, allColumns, context);
  const blocked = gate(bath, context);
  const held: SnapshotRow<"releases">["cells"] = row?.cells ?? {};
  const columns = allColumns.filter((id) => held[id] === undefined);
  const done = rowsOfBath(context.log, "releases", bath ?? "").find((one) => one.cells.releasedAt !== undefined);
  const at = done?.cells.releasedAt;
  const key = row?.cells.id;
  const common = {
    findings: [...afterSpent(row, bath, context), ...releaseFindings(release, context)],
    problems: releaseProblems(filled, release, row !== undefined, context),
    doubts: [
      ...(row === undefined && typeof at === "number"
        ? [`A release of this bath is in the log already, ${shortMoment(at)}. Is this another one?`]
        : []),
      ...acidDoubts(filled, release, context),
    ],
    recorded:
      filled.number("releasedAt") === undefined
        ? `neutralizing of bath ${bath ?? ""}`
        : `release of bath ${bath ?? ""}`,
    ...(blocked === undefined ? {} : { blocked }),
  };
  if (key !== undefined)
    return { ...common, rows: [], fills: [{ table: "releases", key: String(key), cells: cellsOf(filled, columns) }] };
  return {
    ...common,
    rows: [newRow("releases", filled, context)],
  };
}

/** The bath as it stands, by the level of its last reading. */
function proposedVolume(context: LogContext, bath: string): string {
  const tank = tankOf(context, bath);
  const [atLine, line, perDepth] = (["workingVolume", "fillDepth", "volumePerDepth"] as const).map((id) =>
    tank?.number(id),
  );
  if (atLine === undefined) return "";
  const level = lastReadingOf(context.log, bath)?.cells.level;
  const above =
    typeof level === "number" && line !== undefined && perDepth !== undefined ? (level - line) * perDepth : 0;
  return figure(atLine + above, 1);
}

/** Three years after the release: the federal least (40 CFR 403.12(o)); a permit may ask for more. */
function threeYearsAfter(moment: string): string {
  const [, year = "", rest = ""] = /^(\d{4})(-\d{2}-\d{2})/.exec(moment) ?? [];
  if (year === "") return "";
  const day = `${String(Number(year) + 3)}${rest}`;
  return serialOf(day) === undefined ? `${String(Number(year) + 3)}-03-01` : day;
}

/** A bath just closed is the one to release. */
function proposedBath(typed: Draft, context: LogContext): string {
  const closed = bathIds(context.log).filter((id) => bathFacts(context.log, id)?.number("closed") !== undefined);
  const waiting = closed.filter(
    (id) => !rowsOfBath(context.log, "releases", id).some((row) => row.cells.releasedAt !== undefined),
  );
  const chosen = context.bath !== undefined && waiting.includes(context.bath) ? context.bath : waiting.at(-1);
  return typed["bath"] ?? chosen ?? context.bath ?? "";
}

/** Neutralizing, results and release of a closed bath; entered in one go or as the stages, the results and the release come. */
export const releaseEntry: EntryForm<"release"> = {
  ...release,
  icon: DocumentCheckmarkRegular,
  needs: "bath",
  purpose: "Acid in stages, limits, results; then where and when it went.",
  submit: "Record release",
  groups: releaseGroups,
  proposals: (typed, context) => {
    const bath = proposedBath(typed, context);
    return {
      bath,
      when: context.now,
      volume: proposedVolume(context, bath),
      retainedUntil: (typed["releasedAt"] ?? "") === "" ? "" : threeYearsAfter(typed["releasedAt"] ?? ""),
    };
  },
  meaning,
};
