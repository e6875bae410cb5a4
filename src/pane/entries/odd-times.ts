import { fieldTextOf, serialOf } from "../fields/moments.ts";
import { bathFacts } from "./bath-values.ts";
import type { EntryContext, EntryField, FilledFields, Finding } from "./entry-form.ts";

/** Clocks of two machines may differ by this much, in days. */
const clockSlack = 1 / 24;

const spoken = (serial: number): string => fieldTextOf(serial).replace("T", " ");

/** Times that can be right but seldom are. A reading a year ahead would stay the bath's last one for a year. */
export function oddTimes(fields: readonly EntryField[], filled: FilledFields, context: EntryContext): readonly Finding[] {
  const now = serialOf(context.now);
  const bath = bathFacts(context.log, filled.text("bath"));
  const opened = bath?.number("opened");
  const closed = bath?.number("closed");
  return fields.flatMap(({ key, column, label }): readonly Finding[] => {
    const time = filled.number(key);
    if (column.type !== "date and time" || time === undefined) return [];
    const said = `${label ?? column.label}: ${spoken(time)}`;
    if (now !== undefined && time > now + clockSlack) return [{ tone: "watch", text: `${said} is ahead of this computer's clock. Check the date.` }];
    if (opened !== undefined && time < opened) return [{ tone: "watch", text: `${said} is before the bath was opened, ${spoken(opened)}. Check the date.` }];
    if (closed !== undefined && time > closed) return [{ tone: "watch", text: `${said} is after the bath was closed, ${spoken(closed)}. Check the bath and the date.` }];
    return [];
  });
}
