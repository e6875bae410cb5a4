import { bathFacts } from "../../advice/bath-values.ts";
import { closedOn } from "../../advice/books/closed-months.ts";
import type { FieldProblem, FilledFields } from "../../advice/filled-fields.ts";
import type { LogContext } from "../../advice/log-context.ts";
import { dayWords, momentWords, serialOf } from "../../advice/wording/moments.ts";
import type { EntryField } from "./entry-form.ts";

/** Clocks of two machines may differ by this much, in days. */
const clockSlack = 1 / 24;

/** Times at which the entry cannot have happened: still to come, or outside the life of its bath. */
export function impossibleTimes(
  fields: readonly EntryField[],
  filled: FilledFields<string>,
  context: LogContext,
): readonly FieldProblem[] {
  const now = serialOf(context.now);
  const bath = bathFacts(context.log, filled.text("bath"));
  const opened = bath?.number("opened");
  const closed = bath?.number("closed");
  return fields.flatMap(({ key, column, label, anyTime, afterClose }): readonly FieldProblem[] => {
    const time = filled.number(key);
    if (time === undefined || anyTime === true) return [];
    const inBooks = column.type === "date" || column.type === "date and time" ? closedOn(context.log, time) : undefined;
    if (inBooks !== undefined) return [{ key, message: `${label ?? column.label}: ${inBooks}` }];
    if (column.type === "date" && now !== undefined && time > now + clockSlack)
      return [
        {
          key,
          message: `${label ?? column.label}: ${dayWords(time)} is still to come. Check the date.`,
        },
      ];
    if (column.type !== "date and time") return [];
    const said = `${label ?? column.label}: ${momentWords(time)}`;
    if (now !== undefined && time > now + clockSlack)
      return [{ key, message: `${said} is still to come. Check the date.` }];
    if (opened !== undefined && time < opened)
      return [
        { key, message: `${said} is before the bath was opened, ${momentWords(opened)}. Check the bath and the date.` },
      ];
    if (afterClose === true && closed !== undefined && time < closed)
      return [
        { key, message: `${said} is before the bath was closed, ${momentWords(closed)}. Check the bath and the date.` },
      ];
    if (afterClose !== true && closed !== undefined && time > closed)
      return [
        { key, message: `${said} is after the bath was closed, ${momentWords(closed)}. Check the bath and the date.` },
      ];
    return [];
  });
}
