import { describe, expect, it } from "vitest";

import { referencePage } from "../../scripts/reference-page/reference-page.ts";
import { trustSection } from "../../scripts/reference-page/trust-section.ts";
import { achievedAccuracy } from "../reference/chemistry/achieved-accuracy.ts";

describe("the reference page's section on trust", () => {
  const achieved = achievedAccuracy();

  it("shows every figure that is measured, with its rows and its goal", () => {
    const page = referencePage();
    expect(page).toContain('<h2 id="trust">How far to trust this</h2>');
    for (const { subject, rows } of achieved.figures) {
      expect(page).toMatch(new RegExp(`<th scope="row">${subject}</th><td[^>]*>[^<]+</td><td[^>]*>${rows}</td>`));
    }
  });

  it("follows the measurement instead of repeating typed numbers", () => {
    const worse = { ...achieved, coverage: { ...achieved.coverage, contained: 30, rows: 36, medianWidth: 0.987 } };
    expect(trustSection(worse)).toContain("30 of 36 baths");
    expect(trustSection(worse)).toContain("99 % of the opening dose wide");
  });
});
