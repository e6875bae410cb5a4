import type { LogSnapshot } from "../../../../joblog/model/log-snapshot.ts";
import type { EntryField } from "../../entry-form.ts";
import { field, initialsField, meterField } from "../../fields-of.ts";

/** What a reading may hold beside what was read in the cup; folded away in every form that takes readings. */
export function readingDetails(log: LogSnapshot): readonly EntryField[] {
  return [
    meterField(log, "readings"),
    ...(["level", "conductivity", "pTitre", "tTitre"] as const).map((id) => field(log, "readings", id)),
    initialsField(log, "readings"),
    field(log, "readings", "note"),
  ];
}
