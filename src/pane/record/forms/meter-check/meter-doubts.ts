import type { FilledFields } from "../../../../advice/filled-fields.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { checksBefore } from "../../../../advice/meter/meter-facts.ts";
import { isCheckLate } from "../../../../advice/next-step/check-late.ts";
import { figure } from "../../../../advice/wording/figures.ts";
import { shortMoment } from "../../../../advice/wording/moments.ts";
import { metersOf } from "../../fields-of.ts";

/** Whether a meter was left out of the shop's limit at its last check. */
function leftOut(error: number | undefined, { log }: LogContext): error is number {
  const limit = log.fields.meterLimit;
  return error !== undefined && typeof limit === "number" && Math.abs(error) > limit;
}

/**
 * What speaks against the meter of a reading: not named where the log knows several, not checked for too
 * long, left out of limits. `unchecked`: a meter without any check is asked about too.
 */
export function meterDoubts(
  filled: FilledFields<"meter" | "when">,
  unchecked: boolean,
  context: LogContext,
): readonly string[] {
  const [meter, when] = [filled.text("meter"), filled.number("when")];
  const known = metersOf(context.log);
  if (meter === undefined) {
    if (known.length > 1)
      return [
        `Which meter? The log knows ${known.join(", ")}; a reading that names none is never corrected for drift.`,
      ];
    return unchecked && known.length === 0
      ? [
          "No meter check is in the log: a baseline read with an unchecked meter is off by as much as the meter. Take it anyway?",
        ]
      : [];
  }
  const last = when === undefined ? undefined : checksBefore(meter, when, context).at(-1);
  if (last === undefined && !unchecked)
    return context.log.rows.meterChecks.length === 0
      ? []
      : [`Meter ${meter} has no check in the log before this. Read with it anyway?`];
  if (last === undefined)
    return unchecked
      ? [`Meter ${meter} has no check in the log: the baseline is off by as much as the meter. Take it anyway?`]
      : [];
  const checked = last.number("when") ?? 0;
  const limit = context.log.fields.meterCheckDays;
  const days = (when ?? checked) - checked;
  const left = last.number("left");
  return [
    ...(typeof limit === "number" && isCheckLate(checked, limit, when ?? checked)
      ? [
          `Meter ${meter} was last checked ${figure(days, 0)} days ago, ${shortMoment(checked)}; the shop checks every ${figure(limit, 0)}. Read with it anyway?`,
        ]
      : []),
    ...(leftOut(left, context)
      ? [
          `Meter ${meter} was left ${figure(Math.abs(left), 2, 2)} pH off at its last check, ${shortMoment(checked)}. Read with it anyway?`,
        ]
      : []),
  ];
}
