import { lastReadingOf, rowFacts } from "../../../../advice/bath-facts.ts";
import { bathFacts } from "../../../../advice/bath-values.ts";
import type { Finding } from "../../../../advice/finding.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { countOf } from "../../../../advice/wording/figure-words.ts";
import { figure, percent, ph } from "../../../../advice/wording/figures.ts";
import { serialOf, shortMoment } from "../../../../advice/wording/moments.ts";
import { bench } from "../../../../joblog/model/words.ts";

const numberOf = (value: unknown): number | undefined => (typeof value === "number" ? value : undefined);

/** A figure beside the shop's limit for it; `reached` as the Baths sheet judges it. */
function against(
  text: string,
  limit: number | undefined,
  reached: (limit: number) => boolean,
  limitText: (limit: number) => string,
): Finding {
  if (limit === undefined) return { tone: "plain", text: `${text}.` };
  return { tone: reached(limit) ? "watch" : "plain", text: `${text}; the shop's limit is ${limitText(limit)}.` };
}

/** What speaks for a change-out at the moment `closed` and against it, from the log. Age alone is no reason, nor is one figure. */
export function changeOutFindings(bath: string, closed: number | undefined, context: LogContext): readonly Finding[] {
  const facts = bathFacts(context.log, bath);
  if (facts === undefined) return [];
  const { fields } = context.log;
  const findings: Finding[] = [];
  const signal = facts.text("changeOut");
  if (signal !== undefined)
    findings.push({ tone: "watch", text: `${signal.charAt(0).toUpperCase()}${signal.slice(1)}.` });
  const share = facts.number("topUpShare");
  if (share !== undefined)
    findings.push(
      against(
        `Top-ups: ${percent(share)} of the opening dose`,
        numberOf(fields.topUpLimit),
        (limit) => share >= limit,
        percent,
      ),
    );
  const [opened, end = serialOf(context.now)] = [facts.number("opened"), closed];
  if (opened !== undefined && end !== undefined && end >= opened) {
    findings.push(
      against(
        `Open for ${countOf(figure(end - opened, 1), "day")}`,
        numberOf(fields.bathLife),
        (limit) => end - opened > limit,
        (limit) => countOf(figure(limit, 0), "day"),
      ),
    );
  }
  const [first, last] = [facts.number("ratioFirst"), facts.number("ratioLast")];
  if (first !== undefined && last !== undefined && first !== last) {
    findings.push({
      tone: last > first ? "watch" : "plain",
      text: `Total to free alkalinity went from ${figure(first, 2, 2)} to ${figure(last, 2, 2)}${last > first ? ": soil is building up" : ""}.`,
    });
  }
  const benchState = facts.text("benchState");
  if (benchState !== undefined)
    findings.push({ tone: benchState === bench.refused ? "watch" : "plain", text: `Bench tests: ${benchState}.` });
  const reading = lastReadingOf(context.log, bath);
  const read = reading === undefined ? undefined : rowFacts(reading);
  const [value, when] = [read?.number("ph"), read?.number("when")];
  if (value !== undefined && when !== undefined)
    findings.push({ tone: "plain", text: `Last reading ${ph(value)}, ${shortMoment(when)}.` });
  return findings;
}
