import type { FieldProblem, FilledFields } from "../../advice/filled-fields.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { Cells } from "../../joblog/model/definition.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import type { Draft, EntryField } from "../record/entry-form.ts";
import { limitColumn, limitGroups, type LimitId, limitOf } from "./limit-fields.ts";
import { type FilledShopForm, readForm, type ShopForm } from "./shop-form.ts";

const groups = limitGroups.map(({ legend, ids }) => ({
  legend,
  fields: ids.map((id): EntryField => ({
    key: id,
    column: limitColumn(id),
    required: limitOf(id).initial !== undefined,
  })),
}));

const fields = groups.flatMap((group) => group.fields);

/** Pairs of which the first must stay below the second. */
const pairs = [
  ["slopeLow", "slopeHigh"],
  ["sewerLow", "sewerHigh"],
] as const;

export function crossed(number: FilledFields<LimitId>["number"]): readonly FieldProblem[] {
  return pairs.flatMap(([low, high]) => {
    const [below, above] = [number(low), number(high)];
    return below !== undefined && above !== undefined && below >= above
      ? [
          {
            key: high,
            message: `${limitOf(high).label}: ${String(above)} is not above ${String(below)}, ${limitOf(low).label.toLowerCase()}.`,
          },
        ]
      : [];
  });
}

/** All limits in one form; every verdict in the log follows them at once. */
export function limitsForm(log: LogSnapshot, system: UnitSystem): ShopForm {
  const held: Cells = log.fields;
  const fill = (typed: Draft): FilledShopForm => {
    const { values, converted, problems, filled, changed } = readForm(
      fields,
      (key) => held[key],
      typed,
      system,
      log.fields.currency,
    );
    const all = [...problems, ...crossed(filled.number)];
    return {
      values,
      converted,
      problems: all,
      findings:
        changed.length === 0
          ? []
          : [
              {
                tone: "watch",
                text: "Every verdict in this log follows the new limits at once, those of past readings too.",
              },
            ],
      ...(all.length > 0 || changed.length === 0
        ? {}
        : {
            changes: {
              fields: Object.fromEntries(
                changed.map((key) => [key, { before: held[key], after: filled.number(key) ?? filled.text(key) }]),
              ),
            },
          }),
    };
  };
  return {
    title: "Limits",
    saved: () => "Limits",
    purpose: "What readings, meters, baths and releases are held to.",
    groups,
    fill,
  };
}
