import { BeakerRegular } from "@fluentui/react-icons/svg/beaker";

import { insteadOfStronger, isAtLabelHighest } from "../../../../advice/amounts/label-limit.ts";
import { bathFacts } from "../../../../advice/bath-values.ts";
import type { FilledFields } from "../../../../advice/filled-fields.ts";
import type { Finding } from "../../../../advice/finding.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import { surfaces } from "../../../../joblog/model/words.ts";
import type { Draft, EntryField, EntryForm, Meaning } from "../../entry-form.ts";
import { field, initialsField } from "../../fields-of.ts";
import { newRows } from "../../new-rows.ts";
import { benchTest } from "../../step-forms.ts";

type Surface = (typeof surfaces)[number];

const resultKey = (surface: Surface) => `result ${surface}` as const;

const noteKey = (surface: Surface) => `note ${surface}` as const;

/** Two fields for each surface besides those of a test. */
type BenchTestKey = ColumnId<"benchTests"> | ReturnType<typeof resultKey | typeof noteKey>;

const capitalized = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

function resultFields({ log }: LogContext): readonly EntryField[] {
  return surfaces.map((surface) =>
    field(log, "benchTests", "result", { key: resultKey(surface), label: capitalized(surface), required: false }),
  );
}

/** A surface that did not pass asks what was left on it. */
function noteFields(values: Draft, { log }: LogContext): readonly EntryField[] {
  return surfaces
    .filter((surface) => !["", "pass"].includes(values[resultKey(surface)] ?? ""))
    .map((surface) =>
      field(log, "benchTests", "note", {
        key: noteKey(surface),
        label: `${capitalized(surface)}: piece, and what was left`,
      }),
    );
}

function findingsOf(
  tested: readonly { surface: string; result: string }[],
  standsAlready: boolean,
  atHighest: boolean,
): readonly Finding[] {
  if (tested.length === 0) return [];
  const short = tested.filter(({ result }) => result !== "pass").map(({ surface }) => surface);
  if (short.length > 0) {
    return [
      {
        tone: "act",
        text: `Not accepted: ${short.join(", ")} did not pass. ${atHighest ? `The label's highest strength is in. ${insteadOfStronger}` : "Raise the strength, mix, and test again; the baseline waits."}`,
      },
    ];
  }
  return [
    {
      tone: standsAlready ? "watch" : "good",
      text: standsAlready
        ? "These pass. A surface that failed before must be tested again too before the baseline is taken."
        : "Accepted if these are all the surfaces in the load. Next: the baseline.",
    },
  ];
}

function meaning(filled: FilledFields<BenchTestKey>, context: LogContext): Meaning {
  const bath = filled.text("bath");
  const tested = surfaces.flatMap((surface) => {
    const result = filled.text(resultKey(surface));
    return result === undefined ? [] : [{ surface, result }];
  });
  const facts = bathFacts(context.log, bath);
  const refused = facts?.text("benchState") === "not accepted";
  return {
    findings: findingsOf(tested, refused, facts !== undefined && isAtLabelHighest(facts)),
    problems:
      tested.length > 0
        ? []
        : [{ key: resultKey(surfaces[0]), message: "No result yet: give one for at least one surface." }],
    rows: newRows(
      "benchTests",
      filled,
      context,
      tested.map(({ surface, result }) => ({ surface, result, note: filled.text(noteKey(surface)) })),
    ),
    recorded: `${tested.length === 1 ? "bench test of 1 surface" : `bench tests of ${String(tested.length)} surfaces`} for bath ${bath ?? ""}`,
  };
}

/** One row for every surface tried, failures too. */
export const benchTestEntry: EntryForm<"bench test"> = {
  ...benchTest,
  icon: BeakerRegular,
  needs: "bath",
  purpose: "Does the bath clean every kind of surface in the load? Failures count too.",
  submit: "Record bench test",
  groups: (values, context) => {
    const { log } = context;
    const notes = noteFields(values, context);
    return [
      {
        fields: [
          field(log, "benchTests", "bath"),
          field(log, "benchTests", "when"),
          field(log, "benchTests", "strength"),
        ],
      },
      { legend: "Result on each surface (leave blank what was not tried)", fields: resultFields(context) },
      ...(notes.length === 0 ? [] : [{ legend: "Not passed", fields: notes }]),
      {
        legend: "More details",
        folded: true,
        fields: [
          field(log, "benchTests", "water"),
          field(log, "benchTests", "method"),
          field(log, "benchTests", "dwell"),
          initialsField(log, "benchTests"),
        ],
      },
    ];
  },
  proposals: (typed, context) => {
    const bath = typed["bath"] ?? context.bath;
    const facts = bathFacts(context.log, bath);
    return {
      bath: bath ?? "",
      when: context.now,
      strength: facts?.text("strengthReached") ?? "",
      water: facts?.text("water") ?? "",
    };
  },
  meaning,
};
