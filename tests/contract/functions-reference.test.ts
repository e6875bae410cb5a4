import { createHash } from "node:crypto";

import { describe, expect, it } from "vitest";

import { catalogue } from "../../functions/catalogue.ts";
import type { WorksheetFunction } from "../../functions/define-function.ts";
import { formulaNodes } from "../../functions/reference/formula-markup.ts";
import { referenceOf } from "../../functions/reference-of.ts";
import { references } from "../../functions/references.ts";
import { referencePage } from "../../scripts/reference-page/reference-page.ts";

const page = referencePage();

/** These look a figure or a word up in a published table. */
const tables = ["UNITS", "HARDNESSCLASS", "BUFFERPH"];

/** Whether someone measures out concentrate or acid by the result. */
function isAmountToPour({ category, summary, result }: WorksheetFunction): boolean {
  const about = `${summary} ${result.help}`;
  const isPoured = /\b(?:concentrate|top-up|addition|dose|acid)\b/i.test(about);
  return (
    isPoured &&
    result.excelType !== "string" &&
    !/^(?:pH$|as asked|share)/.test(result.unit ?? "") &&
    category !== "Units and strength"
  );
}

function inlineOf(tag: string): string {
  return new RegExp(`<${tag}[^>]*>([\\s\\S]*?)</${tag}>`).exec(page)?.[1] ?? "";
}

describe("the reference page", () => {
  it.each(catalogue.map((fn) => [fn.id, fn] as const))(
    "says where the formula of %s comes from, in symbols where it is one",
    (id) => {
      const { source, symbols } = referenceOf(id);
      expect(source.length).toBeGreaterThan(5);
      expect(symbols.length > 0).toBe(!tables.includes(id));
    },
  );

  it("explains no symbol that the formula lacks", () => {
    for (const [id, { symbols, where }] of Object.entries(references)) {
      const printed = JSON.stringify(symbols.map(formulaNodes));
      for (const symbol of Object.keys(where).flatMap((one) => one.split(", "))) {
        const [node] = formulaNodes(symbol);
        expect([id, symbol, printed.includes(JSON.stringify(node))]).toEqual([id, symbol, true]);
      }
    }
  });

  it("knows no formula of a function that is not there", () => {
    expect(Object.keys(references).sort()).toEqual(catalogue.map(({ id }) => id).sort());
  });

  it("warns wherever a result is measured out or bears on a release", () => {
    const poured = catalogue.filter(isAmountToPour).map(({ id }) => id);
    expect(poured).toEqual(
      expect.arrayContaining(["DOSE", "DOSEATPH", "TOPUP", "TOPUPRANGE", "NEXTADD", "TOPUPTABLE", "ACIDFOR"]),
    );
    const release = catalogue.filter(({ category }) => category === "Discharge").map(({ id }) => id);
    for (const id of [...poured, ...release]) expect([id, referenceOf(id).cautions.length > 0]).toEqual([id, true]);
  });

  it("says who each caution comes from, and prints it with its function", () => {
    for (const { id } of catalogue) {
      const section = page.slice(page.indexOf(`id="${id.toLowerCase()}"`)).split("</section>")[0] ?? "";
      expect([id, section.match(/<div class="caution">/g)?.length ?? 0]).toEqual([
        id,
        referenceOf(id).cautions.length > 0 ? 1 : 0,
      ]);
      for (const { source } of referenceOf(id).cautions) expect(section).toContain(source);
    }
  });

  it("has one place for each anchor, and a place for each of its links", () => {
    const places = Array.from(page.matchAll(/ id="([^"]+)"/g), ([, id]) => id);
    expect(new Set(places).size).toBe(places.length);
    for (const [, target] of page.replace(inlineOf("script"), "").matchAll(/href="#([^"]+)"/g))
      expect(places).toContain(target);
  });

  it("fetches nothing but its icon, and lets only its own script and style run", () => {
    const addresses = Array.from(page.matchAll(/\b(?:src|href|action)="([^"#][^"]*)"/g), ([, address]) => address);
    expect(addresses).toEqual(["assets/icon-32.png"]);
    expect(page).not.toMatch(/@import|url\(|https?:\/\//);
    expect(page).not.toMatch(/ style="| on\w+="/);
    for (const tag of ["style", "script"]) {
      expect(inlineOf(tag).length).toBeGreaterThan(500);
      const hash = createHash("sha256").update(inlineOf(tag)).digest("base64");
      expect(page).toContain(`${tag}-src 'sha256-${hash}'`);
    }
  });

  it("hides no function from a reader without script", () => {
    expect(page.match(/<section class="function"/g)).toHaveLength(catalogue.length);
    expect(page).not.toMatch(/<section[^>]* hidden/);
    expect(page).toContain('<form role="search" hidden>');
  });

  it("works the first example out in the other systems of units", () => {
    expect(page).toContain(
      "=BATH.TANKVOLUME(121.9,60.96,63.5,13.25,&quot;metric&quot;)</code> gives <code>458.6</code>",
    );
  });
});
