import { amountProblems, heldBy } from "../../../../advice/amounts/tank-limits.ts";
import type { FieldProblem, FilledFields } from "../../../../advice/filled-fields.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { limitsOf, type ReleaseFacts } from "../../../../advice/release-facts.ts";
import { figure } from "../../../../advice/wording/figures.ts";
import { shortMoment } from "../../../../advice/wording/moments.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import { allColumns } from "./release-groups.ts";

function limitProblems(release: ReleaseFacts): readonly FieldProblem[] {
  const { low, high } = limitsOf(release);
  const target = release.number("target");
  if (low === undefined || high === undefined) return [];
  const range = `${figure(low, 2, 1)} to ${figure(high, 2, 1)}`;
  if (low >= high)
    return [{ key: "limitLow", message: `pH at least: ${range} leaves no room. The lower limit comes first.` }];
  if (target === undefined || (target >= low && target <= high)) return [];
  return [{ key: "target", message: `Target pH: ${figure(target, 2)} is outside the limits. Allowed: ${range}.` }];
}

/** A stage is poured before it is read. */
function stageProblems(release: ReleaseFacts): readonly FieldProblem[] {
  return ([1, 2, 3] as const).flatMap((stage) => {
    const [poured, read] = [`stage${stage}`, `phAfter${stage}`] as const;
    const missing = release.number(read) !== undefined && release.number(poured) === undefined;
    return missing
      ? [
          {
            key: poured,
            message: `Acid ${stage}: blank. Say how much went in before pH ${figure(release.number(read) ?? 0, 2)} was read.`,
          },
        ]
      : [];
  });
}

const wanted: readonly (readonly [key: ColumnId<"releases">, message: string])[] = [
  ["releasedAt", "Released: blank. Say when it went."],
  ["releasedVolume", "Volume released: blank. Say how much really went out."],
  ["point", "Discharge point: blank. Say where it went."],
  ["initials", "Initials are blank. Say who signs for the release."],
  ["permit", "Permit or code: blank. Say which one the limits come from."],
];

/** A release says when, how much, where, by whom and under which permit. */
function completeness(filled: FilledFields<ColumnId<"releases">>, release: ReleaseFacts): readonly FieldProblem[] {
  const begun = (["releasedAt", "releasedVolume", "point"] as const).some((key) => filled.text(key) !== undefined);
  if (!begun) return [];
  const { permit } = limitsOf(release);
  const missing = wanted.filter(([key]) => (key === "permit" ? permit : release.text(key)) === undefined);
  return missing.map(([key, message]) => ({ key, message }));
}

function orderProblems(filled: FilledFields<ColumnId<"releases">>, release: ReleaseFacts): readonly FieldProblem[] {
  const [began, gone] = [release.number("when"), filled.number("releasedAt")];
  return began === undefined || gone === undefined || gone >= began
    ? []
    : [
        {
          key: "releasedAt",
          message: `Released: ${shortMoment(gone)} is before the neutralizing began, ${shortMoment(began)}. Check the date.`,
        },
      ];
}

/** What is wrong with a release beyond single fields. `earlier`: it completes a row of the log. */
export function releaseProblems(
  filled: FilledFields<ColumnId<"releases">>,
  release: ReleaseFacts,
  earlier: boolean,
  context: LogContext,
): readonly FieldProblem[] {
  const bath = filled.text("bath");
  const nothing = earlier && allColumns.every((key) => filled.text(key) === undefined);
  return [
    ...(nothing ? [{ key: "bath", message: "Nothing new yet: give a stage, a result or the release." }] : []),
    ...amountProblems("volume", "Volume", filled.number("volume"), heldBy(context, bath), context),
    ...amountProblems(
      "releasedVolume",
      "Volume released",
      filled.number("releasedVolume"),
      heldBy(context, bath),
      context,
    ),
    ...limitProblems(release),
    ...stageProblems(release),
    ...completeness(filled, release),
    ...orderProblems(filled, release),
  ];
}
