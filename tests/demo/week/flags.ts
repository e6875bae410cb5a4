import { expect, it } from "vitest";

import { bathOne, march } from "../../../src/pane/demo/week-event.ts";
import { numberIn, readCsv, textIn } from "../../reference/read-csv.ts";
import { logAt, number, type PlayedWeek, reading, row, serial } from "./played-week.ts";

const flags = readCsv("../demo/week/expected-flags.csv");

export function holdsFlags(week: () => PlayedWeek): void {
  it.each(flags)("$reading keeps its raw pH and stands against a trigger of $trigger", (flag) => {
    const { log } = week();
    expect(number(reading(log, bathOne, textIn(flag, "when")), "ph")).toBe(numberIn(flag, "pH read"));
    expect(number(row(log, "baths", { bath: bathOne }), "trigger")).toBeCloseTo(numberIn(flag, "trigger"), 9);
  });

  // The list takes off 0.05 a day from the last check; the log draws a line between what both checks found, 0.0466 a day.
  it.each(flags)("$reading without the meter's drift is $pH without drift within 0.01", (flag) => {
    const corrected = number(reading(week().log, bathOne, textIn(flag, "when")), "phCorrected");
    expect(Math.abs(corrected - numberIn(flag, "pH without drift"))).toBeLessThan(0.0101);
  });

  it("R008, read hot, asks for no top-up, on the sheet or in the form", () => {
    const when = march(2, "14:05");
    const cells = reading(week().log, bathOne, when);
    expect(cells.verdict).toBe("hold");
    expect(cells.firstAddition).toBeUndefined();
    const played = week().entries.find(({ event }) => event.entry === "reading" && event.at === when);
    const said = played?.filled.meaning.findings.map(({ text }) => text).join("\n") ?? "";
    expect(said).toContain("A used bath may be lower: cool a sample to be sure.");
    expect(said).not.toContain("Top up");
  });

  it.each(flags.filter((flag) => textIn(flag, "flag") === "hidden by drift"))(
    "$reading says top up only once the drift is out",
    (flag) => {
      const when = textIn(flag, "when");
      expect(reading(logAt(week(), march(3, "23:59")), bathOne, when)["verdict"]).toBe("near");
      const cells = reading(logAt(week(), march(4, "08:05")), bathOne, when);
      expect([cells.verdictAsRead, cells.verdict]).toEqual(["near", "top up"]);
      expect(cells.flag).toBe("verdict changed by the meter's drift: top up instead of near");
    },
  );

  it("the failed check reaches back to the 18 readings since the one before and turns two verdicts", () => {
    expect(row(week().log, "meterChecks", { when: serial(march(4, "08:05")) })).toMatchObject({
      verdict: "as found out of limits",
      readingsReached: 18,
      verdictsFlipped: 2,
    });
  });

  it("R015 says top up as read", () => {
    expect(reading(week().log, bathOne, march(4, "08:15"))).toMatchObject({
      verdictAsRead: "top up",
      verdict: "top up",
    });
  });
}
