import type { Draft } from "../record/entry-form.ts";
import type { EntryId } from "../record/forms.ts";

/** One entry of the invented week: what a person types into a form of the pane, and when. */
export interface WeekEvent {
  /** The moment at which it is typed, as a date-time field writes it. */
  readonly at: string;
  readonly entry: EntryId;
  /** The bath chosen in the pane. */
  readonly bath?: string;
  readonly draft: Draft;
  /** What the form asks before it records this; the person looks, and says yes. */
  readonly confirms?: readonly RegExp[];
}

export const bathOne = "B-T1-0301";
export const bathTwo = "B-T2-0303";

/** A day and a clock time of March 2027: `march(1, "09:45")`. */
export function march(day: number, clock: string): string {
  return `2027-03-${String(day).padStart(2, "0")}T${clock}`;
}

/** A draft without the fields that were left alone. */
export function typed(fields: Readonly<Record<string, string | number | undefined>>): Draft {
  return Object.fromEntries(
    Object.entries(fields).flatMap(([key, value]) =>
      value === undefined || value === "" ? [] : [[key, String(value)]],
    ),
  );
}
