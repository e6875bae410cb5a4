import { dryAcids } from "../../../core/discharge/acid-products.ts";
import { blankIf, when } from "../../formula/choices.ts";
import { any, type Condition, equal, is, isBlank } from "../../formula/conditions.ts";
import type { Expression } from "../../formula/expression.ts";
import type { Log } from "../../formula/log-names.ts";
import { columnsOf } from "../../model/columns.ts";
import type { ComputedColumn, UnitOf } from "../../model/definition.ts";
import { mass, volume } from "../../model/units-of.ts";

const { computed } = columnsOf<"releases">();

function word(unit: UnitOf, { named }: Log): Expression {
  return when(is(named.unitSystem, "US"), unit.US)
    .when(is(named.unitSystem, "imperial"), unit.imperial)
    .otherwise(unit.metric);
}

function isDry(acid: Expression): Condition {
  return any(...dryAcids.map((name) => equal(acid, name)));
}

/** The headers of the acid's amounts name two units, since one column holds dry and liquid acids; this says which it is. */
export const acidUnit: ComputedColumn = computed(
  {
    id: "acidUnit",
    label: "Acid counted in",
    type: "text",
    width: 10,
    help: "The unit of every amount of acid in this row: dry acids go by weight, liquid ones by volume.",
  },
  ({ acid }, log) => blankIf([isBlank(acid)], when(isDry(acid), word(mass, log)).otherwise(word(volume, log))),
);
