import { describe, expect, it } from "vitest";

import { text } from "../../scripts/reference-page/html-text.ts";
import { referencePage } from "../../scripts/reference-page/reference-page.ts";
import { trustSection } from "../../scripts/reference-page/trust-section.ts";
import { achievedAccuracy } from "../reference/chemistry/achieved-accuracy.ts";
import { readCsv, textIn } from "../reference/read-csv.ts";

describe("the reference page's section on trust", () => {
  const achieved = achievedAccuracy();
  const page = trustSection(achieved);
  const between = (from: string, to: string): string => page.slice(page.indexOf(from), page.indexOf(to));

  it("stands on the page", () => {
    expect(referencePage()).toContain('<h2 id="trust">How far to trust this</h2>');
  });

  it("shows every figure that is measured, with what it is against and its rows", () => {
    for (const { subject, against, rows } of achieved.figures) {
      expect(page).toMatch(
        new RegExp(
          `<th scope="row">${text(subject)}</th><td[^>]*>${text(against).replaceAll(".", "[.]")}</td><td[^>]*>${String(rows)}</td>`,
        ),
      );
    }
  });

  it("keeps measurements apart from a program that was given our constants", () => {
    const measured = between('id="trust-measured"', 'id="trust-calculated"');
    const calculated = between('id="trust-calculated"', 'id="trust-databases"');
    for (const { subject, judge } of achieved.figures) {
      const row = `<th scope="row">${text(subject)}</th>`;
      expect(measured.includes(row), subject).toBe(judge === "measurement");
      expect(calculated.includes(row), subject).toBe(judge === "same constants");
    }
    expect(measured).not.toContain("our constants");
  });

  it("says that no row is a real wash bath and that no real Excel has run it", () => {
    expect(page).toContain("No row of these tables is a real wash bath.");
    expect(page).toContain("No real Excel has run Bathsheet yet");
  });

  it("states the limit for potassium hydroxide as it is now", () => {
    expect(page).toContain("by 0.021 at 0.1 mol/kg, 0.065 at 0.35 mol/kg, 0.089 at 0.5 mol/kg");
  });

  it("shows databases as they are published beside ours", () => {
    for (const { bath, ours } of achieved.databases) {
      expect(page).toContain(`<th scope="row">${text(bath)}</th>`);
      expect(page).toContain(`<td data-label="Bathsheet">${ours.toFixed(3)}</td>`);
    }
  });

  it("counts the constants as their table has them", () => {
    const statuses = readCsv("chemistry/constants.csv").map((row) => textIn(row, "status"));
    const count = (wanted: string): number => statuses.filter((status) => status === wanted).length;
    expect(page).toContain(`All ${String(statuses.length)} constants`);
    expect(page).toContain(`${String(count("confirmed"))} now agree`);
    expect(page).toContain(`${String(count("differs"))} differ`);
    expect(page).toContain(`${String(count("from memory"))} have no copy`);
  });

  it("follows the measurement instead of repeating typed numbers", () => {
    const worse = { ...achieved, coverage: { ...achieved.coverage, contained: 30, rows: 36, smallestWidth: 0.987 } };
    expect(trustSection(worse)).toContain("30 of 36 baths");
    expect(trustSection(worse)).toContain("99 % to");
  });
});
