import type { LogContext } from "../../../../advice/log-context.ts";
import {
  isEntered,
  openRelease,
  type ReleaseFacts,
  releaseFacts,
  shopsLimits,
} from "../../../../advice/release-facts.ts";
import type { SnapshotRow } from "../../../../joblog/model/log-snapshot.ts";
import { analysesResults } from "../../../../joblog/model/words.ts";
import type { Draft, EntryField, FieldGroup } from "../../entry-form.ts";
import { field, textsOf } from "../../fields-of.ts";
import { filledFields, readFields } from "../../fill-form.ts";
import { acidUnitOf } from "./release-findings.ts";

const plan = ["when", "volume", "ph", "temperature", "alkalinity", "acid", "purity", "target"] as const;
const stages = ["stage1", "phAfter1", "stage2", "phAfter2", "stage3", "phAfter3"] as const;
const limits = ["limitLow", "limitHigh", "permit"] as const;
const results = ["analysesResult", "analyses"] as const;
const release = ["releasedAt", "releasedVolume", "point", "retainedUntil"] as const;
const more = ["initials", "note"] as const;

export const allColumns = [...plan, ...stages, ...limits, ...results, ...release, ...more] as const;

type ReleaseColumn = (typeof allColumns)[number];

/** An amount of acid in the unit that its kind is counted in. */
function acidField(id: ReleaseColumn, acid: string | undefined, { log }: LogContext): EntryField {
  const plain = field(log, "releases", id);
  const unit = acidUnitOf(acid);
  return unit === undefined ? plain : { ...plain, column: { ...plain.column, unit } };
}

function releaseField(id: ReleaseColumn, acid: string | undefined, context: LogContext): EntryField {
  const { log } = context;
  if (id.startsWith("stage")) return acidField(id, acid, context);
  // A signature: nothing proposes it.
  if (id === "initials")
    return field(log, "releases", id, { required: false, suggestions: textsOf(log, "people", "initials") });
  if (id === "when" || id === "releasedAt") return field(log, "releases", id, { afterClose: true });
  // Blank means awaited; the word in the cell would stand in the way of the result.
  if (id === "analysesResult")
    return field(log, "releases", id, { choices: analysesResults.filter((word) => word !== "awaited") });
  if (id === "retainedUntil") return field(log, "releases", id, { anyTime: true });
  if (id === "point") return field(log, "releases", id, { suggestions: textsOf(log, "releases", id) });
  return field(log, "releases", id);
}

/** A stage is asked for once the pH after the one before is known. */
function stagesToShow(facts: ReleaseFacts): readonly ReleaseColumn[] {
  const after = ([1, 2] as const).map((stage) => facts.number(`phAfter${stage}`) !== undefined);
  const known = after.indexOf(false);
  return stages.slice(0, 2 * (known < 0 ? 3 : known + 1));
}

/** The fields of a release that its row does not hold yet; those of the release itself only once limits and results are in. */
export function releaseGroups(values: Draft, context: LogContext): readonly FieldGroup[] {
  const row = openRelease(context, values["bath"]);
  const held: SnapshotRow<"releases">["cells"] = row?.cells ?? {};
  const acid = held.acid === undefined ? values["acid"] : String(held.acid);
  const left = (ids: readonly ReleaseColumn[]): readonly EntryField[] =>
    ids.filter((id) => held[id] === undefined).map((id) => releaseField(id, acid, context));
  const all = left(allColumns);
  const filled = filledFields(readFields(all, values, context.system).values);
  const facts = releaseFacts(row, values["bath"], filled, allColumns, context);
  const shopLimits = shopsLimits(context);
  const hasShopLimits = shopLimits.low !== undefined && shopLimits.high !== undefined;
  const entered = isEntered(facts);
  const groups: readonly FieldGroup[] = [
    { legend: "Acid, in stages", fields: left(stagesToShow(facts)) },
    {
      legend: hasShopLimits ? "Limits, if not the shop's own" : "Limits of your permit",
      folded: hasShopLimits,
      fields: left(limits),
    },
    { legend: "Result of the analyses", fields: left(results) },
    { legend: "Release", fields: entered ? left(release) : [] },
    { legend: "More details", folded: true, fields: left(more) },
  ];
  return [
    { fields: [field(context.log, "releases", "bath"), ...left(row === undefined ? plan : plan.slice(1))] },
    ...groups.filter(({ fields }) => fields.length > 0),
  ];
}
