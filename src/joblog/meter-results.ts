import { computed, helper } from "./columns.ts";
import type { ComputedColumn, References } from "./definition.ts";
import { after, at, before, blankIf, from, quoted, where } from "./formulas.ts";
import { checkKey } from "./meter-key.ts";
import { meterVerdict, verdictChanged } from "./words.ts";

const error = { type: "number", format: "+0.00;-0.00;0.00", width: 8 } as const;

/** As found less the buffer; rounded, or 10.06 in 10.01 would be out of a limit of 0.05. */
function errorIn(buffer: 1 | 2, kind: "asFound" | "asLeft"): (r: References) => string {
  const [read, known] = [`${kind}${String(buffer)}`, `buffer${String(buffer)}`];
  return (r) => blankIf([`NOT(ISNUMBER(${r.here(read)}))`, `NOT(ISNUMBER(${r.here(known)}))`], `ROUND(${r.here(read)}-${r.here(known)},3)`);
}

/** The baths are alkaline: what counts for them is the buffer with the higher pH. */
function inHigherBuffer(r: References, one: string, two: string): string {
  return `IF(SUM(${r.here("buffer2")})>=SUM(${r.here("buffer1")}),${two},${one})`;
}

/** Checks of the same meter that say what error it was left with. */
function ofMeter(r: References, when: string): string {
  return where([
    [r.all("meterChecks", "meter"), r.here("meter")],
    [r.all("meterChecks", "left"), quoted(">-99")],
    [r.all("meterChecks", "when"), when],
  ]);
}

function reached(r: References, ...more: readonly (readonly [string, string])[]): string {
  return `COUNTIFS(${where([
    [r.all("readings", "meter"), r.here("meter")],
    [r.all("readings", "ph"), quoted(">0")],
    [r.all("readings", "when"), from(`SUM(${r.here("since")})`)],
    [r.all("readings", "when"), before(r.here("when"))],
    ...more,
  ])})`;
}

export const meterResults: readonly ComputedColumn[] = [
  computed({ id: "error1", label: "Error 1, pH", ...error, help: "As found less the buffer." }, errorIn(1, "asFound")),
  computed({ id: "error2", label: "Error 2, pH", ...error, help: "As found less the buffer." }, errorIn(2, "asFound")),
  computed({ id: "slope", label: "Slope", type: "number", format: '0.0"%"', width: 8, help: "Of the theoretical slope at that temperature, from the voltages." },
    (r) => blankIf([...["buffer1", "mv1", "buffer2", "mv2"].map((id) => `NOT(ISNUMBER(${r.here(id)}))`), `${r.here("buffer1")}=${r.here("buffer2")}`],
      `BATH.METERSLOPE(${r.here("buffer1")},${r.here("mv1")},${r.here("buffer2")},${r.here("mv2")},${r.here("temperature")},${r.named("unitSystem")})`)),
  computed({ id: "verdict", label: "Verdict", type: "text", width: 21, help: "Against the shop's own limits on the sheet Shop." },
    (r) => {
      const out = (id: string): string => `ABS(SUM(${r.here(id)}))>${r.named("meterLimit")}`;
      const slope = `IF(${r.here("slope")}="",FALSE,OR(${r.here("slope")}<${r.named("slopeLow")},${r.here("slope")}>${r.named("slopeHigh")}))`;
      return blankIf([`${r.here("meter")}=""`, `NOT(ISNUMBER(${r.here("when")}))`],
        `IF(OR(${out("error1")},${out("error2")}),${quoted(meterVerdict.asFound)},IF(${slope},${quoted(meterVerdict.slope)},` +
        `IF(OR(${r.here("error1")}="",${r.here("error2")}=""),${quoted(meterVerdict.incomplete)},${quoted(meterVerdict.within)})))`);
    }),
  computed({ id: "since", label: "Reaches back to", type: "date and time", width: 16, help: "The meter's check before this one: drift is taken out of the readings since." },
    (r) => {
      const earlier = `MAXIFS(${r.all("meterChecks", "when")},${ofMeter(r, before(r.here("when")))})`;
      return blankIf([`${r.here("meter")}=""`, `NOT(ISNUMBER(${r.here("when")}))`], `IF(${earlier}=0,"",${earlier})`);
    }),
  computed({ id: "readingsReached", label: "Readings reached", type: "whole number", format: "0", width: 9, help: "Readings with this meter since then. Without a check before they stay as read." },
    (r) => blankIf([`${r.here("verdict")}=""`], reached(r))),
  computed({ id: "verdictsFlipped", label: "Verdicts changed", type: "whole number", format: "0", width: 9, help: "How many of those say something else with the drift taken out; Readings names them in its column Drift." },
    (r) => blankIf([`${r.here("verdict")}=""`], reached(r, [r.all("readings", "flag"), quoted(`${verdictChanged}*`)]))),
  computed({ id: "due", label: "Check again by", type: "date", width: 11, help: "Of a meter's last check: the next one by the shop's own rule." },
    (r) => blankIf([`${r.here("left")}=""`, `${r.here("nextAt")}<>""`], `INT(${r.here("when")})+${r.named("meterCheckDays")}`)),
];

export const meterHelpers: readonly ComputedColumn[] = [
  helper({ id: "found", label: "Error found", type: "number", format: "0.000", width: 8, help: "As found in the buffer with the higher pH." },
    (r) => inHigherBuffer(r, r.here("error1"), r.here("error2"))),
  helper({ id: "left", label: "Error left", type: "number", format: "0.000", width: 8, help: "As left in that buffer, or as found where nothing was adjusted; blank where the check says neither." },
    (r) => {
      const left = inHigherBuffer(r, errorIn(1, "asLeft")(r), errorIn(2, "asLeft")(r));
      return blankIf([`${r.here("meter")}=""`, `NOT(ISNUMBER(${r.here("when")}))`], `IF(ISNUMBER(${left}),${left},${r.here("found")})`);
    }),
  helper({ id: "key", label: "Meter and minute", type: "text", width: 16, help: "By which a reading finds its check." },
    (r) => blankIf([`${r.here("left")}=""`], checkKey(r.here("meter"), r.here("when")))),
  helper({ id: "nextAt", label: "Next check", type: "date and time", width: 16, help: "Of the same meter; blank if none yet." },
    (r) => {
      const next = `MINIFS(${r.all("meterChecks", "when")},${ofMeter(r, after(r.here("when")))})`;
      return blankIf([`${r.here("left")}=""`], `IF(${next}=0,"",${next})`);
    }),
  helper({ id: "nextDrift", label: "Drift by then", type: "number", format: "0.000", width: 8, help: "Error found at the next check less the error left here." },
    (r) => {
      const found = at(r, "meterChecks", "found", `MATCH(${checkKey(r.here("meter"), r.here("nextAt"))},${r.all("meterChecks", "key")},0)`);
      return blankIf([`${r.here("nextAt")}=""`], `IF(ISNUMBER(${found}),${found}-${r.here("left")},"")`);
    }),
];
