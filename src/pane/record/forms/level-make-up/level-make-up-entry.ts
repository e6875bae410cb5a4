import { ArrowAutofitHeightRegular } from "@fluentui/react-icons/svg/arrow-autofit-height";

import { amountProblems, heldBy, levelDoubts, levelProblems, tankOf } from "../../../../advice/amounts/tank-limits.ts";
import { roomDoubts } from "../../../../advice/amounts/tank-room.ts";
import { lastReadingOf } from "../../../../advice/bath-facts.ts";
import { bathFacts } from "../../../../advice/bath-values.ts";
import { withUnitCosts } from "../../../../advice/books/unit-costs.ts";
import { draftedLog } from "../../../../advice/drafted-row.ts";
import type { FieldProblem, FilledFields } from "../../../../advice/filled-fields.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { amount as amountFigure, figure } from "../../../../advice/wording/figures.ts";
import { volume as volumeUnit } from "../../../../joblog/model/units-of.ts";
import { readInput } from "../../../controls/read-input.ts";
import type { Draft, EntryForm, Meaning } from "../../entry-form.ts";
import { field, initialsField, inputColumn } from "../../fields-of.ts";
import { newRows } from "../../new-rows.ts";
import { levelMakeUp } from "../../step-forms.ts";
import { keyed, type MakeUpKey } from "./level-make-up-facts.ts";
import { makeUpFindings } from "./level-make-up-findings.ts";

function problems(filled: FilledFields<MakeUpKey>, context: LogContext): readonly FieldProblem[] {
  const bath = filled.text("bath");
  const [before, after] = [filled.number("levelBefore"), filled.number("levelAfter")];
  return [
    ...amountProblems("amount", "Amount", filled.number("amount"), heldBy(context, bath), context),
    ...amountProblems(
      "concentrateAmount",
      "Concentrate with it",
      filled.number("concentrateAmount"),
      heldBy(context, bath),
      context,
    ),
    ...levelProblems("levelBefore", "Level before", before, bath, context),
    ...levelProblems("levelAfter", "Level after", after, bath, context),
    ...(before !== undefined && after !== undefined && after <= before
      ? [
          {
            key: "levelAfter",
            message: `Level after: ${figure(after, 1)} is not above the level before, ${figure(before, 1)}. Check both.`,
          },
        ]
      : []),
  ];
}

/** Water from the wall hose clouds a bath that was made with soft water. */
function waterDoubts(filled: FilledFields<MakeUpKey>, context: LogContext): readonly string[] {
  const facts = bathFacts(context.log, filled.text("bath"));
  const [name, ofFill] = [filled.text("water"), facts?.text("water")];
  if (name === undefined || name === ofFill) return [];
  const hardness = keyed(context, "waters", "water", name)?.number("hardness");
  const covered = keyed(context, "concentrates", "concentrate", facts?.text("concentrate"))?.number("labelHardness");
  if (hardness !== undefined && covered !== undefined && hardness <= covered) return [];
  return [
    `${name} is not the water of the fill${hardness === undefined ? "" : ` and has ${figure(hardness, 0)} mg/L of hardness`}: curd (soap scum) may form on the pieces. Did it go in?`,
  ];
}

/** Without a level typed: what the log says the tank holds with water and concentrate. */
function roomOf(
  filled: FilledFields<MakeUpKey>,
  rows: ReturnType<typeof withUnitCosts>,
  context: LogContext,
): readonly string[] {
  if (filled.number("levelAfter") !== undefined || filled.number("amount") === undefined) return [];
  return roomDoubts(draftedLog(context.log, rows).added("additions"), context);
}

/** What stands in the row of the water already. */
const blankBesideWater = { water: undefined, levelBefore: undefined, levelAfter: undefined, note: undefined };

function meaning(filled: FilledFields<MakeUpKey>, context: LogContext): Meaning {
  const bath = filled.text("bath");
  const poured = filled.number("amount");
  const concentrate = filled.number("concentrateAmount");
  const rows = withUnitCosts(
    newRows("additions", filled, context, [
      { kind: "water", purpose: "make-up" },
      ...(concentrate === undefined
        ? []
        : [{ kind: "concentrate", purpose: "make-up", amount: concentrate, ...blankBesideWater } as const]),
    ]),
    context.log,
  );
  return {
    findings: makeUpFindings(rows[0]?.row ?? {}, filled, context),
    problems: problems(filled, context),
    doubts: [
      ...waterDoubts(filled, context),
      ...levelDoubts(filled.number("levelBefore"), bath, context),
      ...levelDoubts(filled.number("levelAfter"), bath, context),
      ...roomOf(filled, rows, context),
    ],
    rows,
    recorded: `level make-up of bath ${bath ?? ""}, ${amountFigure(poured ?? 0)} ${volumeUnit[context.system]}`,
  };
}

/** The amount that brings the level from before to after, less the concentrate that goes with it. */
function proposedAmount(values: Draft, context: LogContext): string {
  const perDepth = tankOf(context, values["bath"])?.number("volumePerDepth");
  const level = (id: "levelBefore" | "levelAfter"): number | undefined => {
    const reading = readInput(inputColumn("additions", id), context.system, values[id] ?? "");
    return reading.read === "value" && typeof reading.value === "number" ? reading.value : undefined;
  };
  const [before, after] = [level("levelBefore"), level("levelAfter")];
  return perDepth === undefined || before === undefined || after === undefined || after <= before
    ? ""
    : figure((after - before) * perDepth, 2);
}

/** Water back to the line, and the concentrate that left with the pieces. */
export const levelMakeUpEntry: EntryForm<"level make-up"> = {
  ...levelMakeUp,
  icon: ArrowAutofitHeightRegular,
  needs: "bath",
  purpose: "Water back to the line; says what evaporated and what was carried out.",
  submit: "Record make-up",
  groups: (_values, { log }) => [
    {
      fields: [
        field(log, "additions", "levelBefore"),
        field(log, "additions", "levelAfter"),
        field(log, "additions", "amount", { label: "Water in" }),
        field(log, "additions", "water", { required: true }),
        field(log, "additions", "amount", { key: "concentrateAmount", label: "Concentrate with it", required: false }),
        field(log, "additions", "account", { required: true }),
        field(log, "additions", "when"),
        field(log, "additions", "bath"),
      ],
    },
    {
      legend: "More details",
      folded: true,
      fields: [
        field(log, "additions", "minutesMixed"),
        initialsField(log, "additions"),
        field(log, "additions", "note"),
      ],
    },
  ],
  proposals: (typed, context) => {
    const bath = typed["bath"] ?? context.bath ?? "";
    const line = tankOf(context, bath)?.number("fillDepth");
    const level = bath === "" ? undefined : lastReadingOf(context.log, bath)?.cells.level;
    const low = typeof level === "number" && line !== undefined && level < line;
    const start = {
      bath,
      when: context.now,
      levelBefore: low ? figure(level, 1) : "",
      levelAfter: line === undefined ? "" : figure(line, 1),
      water: bathFacts(context.log, bath)?.text("water") ?? "",
      account: "claims",
    };
    return { ...start, amount: proposedAmount({ ...start, ...typed }, context) };
  },
  meaning,
};
