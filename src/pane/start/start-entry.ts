import { tankVolume } from "../../../functions/tank/tank-volume.ts";
import { rimFindings } from "../../advice/amounts/tank-limits.ts";
import { askNumber } from "../../advice/ask.ts";
import type { FieldProblem, FilledFields } from "../../advice/filled-fields.ts";
import type { Finding } from "../../advice/finding.ts";
import { amount } from "../../advice/wording/figures.ts";
import { serialOf } from "../../advice/wording/moments.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { ColumnId } from "../../joblog/formula/log-names.ts";
import type { Cells, LogContent } from "../../joblog/model/definition.ts";
import { volume as volumeUnit } from "../../joblog/model/units-of.ts";
import type { Draft, FieldGroup } from "../record/entry-form.ts";
import { field } from "../record/fields-of.ts";
import { filledFields, readFields } from "../record/fill-form.ts";

/** The "Start a log here" form: what was typed, what it means, and the content of the log it makes. */
export interface FilledStart {
  readonly groups: readonly FieldGroup[];
  readonly converted: Readonly<Partial<Record<string, string>>>;
  readonly problems: readonly FieldProblem[];
  readonly findings: readonly Finding[];
  readonly content: LogContent;
}

type StartTable = "claims" | "tanks" | "waters" | "concentrates";

/** A field's key: its table and column. */
type StartKey = { readonly [Table in StartTable]: `${Table}.${ColumnId<Table>}` }[StartTable];

const own = <Table extends StartTable>(
  table: Table,
  ids: readonly ColumnId<Table>[],
  required: readonly ColumnId<Table>[],
): FieldGroup["fields"] =>
  ids.map((id) => field(undefined, table, id, { key: `${table}.${id}`, required: required.includes(id) }));

const groups: readonly FieldGroup[] = [
  { legend: "First claim", fields: own("claims", ["claim", "loss"], ["claim"]) },
  {
    legend: "Tank, measured inside",
    fields: own(
      "tanks",
      ["tank", "length", "width", "fillDepth", "height", "displacement"],
      ["tank", "length", "width", "fillDepth"],
    ),
  },
  { legend: "Water", fields: own("waters", ["water", "name", "hardness", "alkalinity"], ["water"]) },
  {
    legend: "Concentrate, from label and SDS",
    fields: own(
      "concentrates",
      [
        "concentrate",
        "description",
        "builder",
        "packVolume",
        "packPrice",
        "alkalinityStrength",
        "capacity",
        "labelHardness",
      ],
      ["concentrate"],
    ),
  },
];

function findingsOf(filled: FilledFields<StartKey>, system: UnitSystem): readonly Finding[] {
  const [length, width, depth] = (["length", "width", "fillDepth"] as const).map((id) => filled.number(`tanks.${id}`));
  if (length === undefined || width === undefined || depth === undefined) return [];
  const volume = askNumber(tankVolume, {
    length,
    width,
    depth,
    displacement: filled.number("tanks.displacement"),
    system,
  });
  return [
    volume.known
      ? { tone: "good", text: `Working volume ${amount(volume.value)} ${volumeUnit[system]}.` }
      : { tone: "act", text: volume.why },
    ...rimFindings(filled.number("tanks.height"), depth),
  ];
}

function rowOf(filled: FilledFields<string>, table: StartTable): Cells {
  const fields = groups.flatMap((group) => group.fields).filter((one) => one.key.startsWith(`${table}.`));
  return Object.fromEntries(fields.map((one) => [one.column.id, filled.number(one.key) ?? filled.text(one.key)]));
}

/** Reads the form. `today` is the present day as a date field writes it. */
export function fillStart(typed: Draft, system: UnitSystem, today: string): FilledStart {
  const readings = readFields(
    groups.flatMap((group) => group.fields),
    typed,
    system,
  );
  const filled = filledFields(readings.values);
  const tidy = (key: string): string | undefined => (typed[key]?.trim() === "" ? undefined : typed[key]?.trim());
  return {
    groups,
    converted: readings.converted,
    problems: readings.problems,
    findings: findingsOf(filled, system),
    content: {
      fields: { shop: tidy("shop"), jobNumber: tidy("jobNumber"), started: serialOf(today) },
      rows: {
        claims: [rowOf(filled, "claims")],
        tanks: [rowOf(filled, "tanks")],
        waters: [rowOf(filled, "waters")],
        concentrates: [rowOf(filled, "concentrates")],
      },
    },
  };
}
