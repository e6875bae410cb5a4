import { computed, helper, keyInput, momentInput, numberInput, textInput, wordInput } from "./columns.ts";
import type { ColumnDefinition, SheetDefinition } from "./definition.ts";
import { after, at, blankIf, halfMinute, never, positionOf, where } from "./formulas.ts";
import { between, seconds } from "./units-of.ts";
import { benchMethods, benchResults, surfaces } from "./words.ts";

const columns: readonly ColumnDefinition[] = [
  textInput({ id: "id", label: "Test", width: 8, required: true, help: "Running number." }),
  keyInput({ id: "bath", label: "Bath", width: 14, required: true, from: ["baths", "bath"], help: "The bath whose solution was tested." }),
  momentInput({ id: "when", label: "When", width: 16, required: true, help: "Date and time of the test." }),
  textInput({ id: "strength", label: "Strength", width: 11, help: "Strength tested, such as 1+40." }),
  keyInput({ id: "water", label: "Water", width: 8, from: ["waters", "water"], help: "Water of the test solution." }),
  wordInput({ id: "surface", label: "Surface", words: surfaces, width: 17, required: true, help: "One row for each surface, failures too." }),
  wordInput({ id: "method", label: "Method", words: benchMethods, width: 16, help: "How it was tried." }),
  numberInput({ id: "dwell", label: "Dwell", unit: seconds, limits: between(0, 3600), format: "0", width: 8, help: "Time on the surface before wiping." }),
  wordInput({ id: "result", label: "Result", words: benchResults, width: 9, required: true, help: "Partial counts as not passed." }),
  textInput({ id: "note", label: "Note", width: 28, help: "Which piece, and what was left on it." }),
  textInput({ id: "initials", label: "Initials", width: 8, help: "Who tested." }),
  computed({ id: "standing", label: "Stands", type: "text", width: 26, help: "Whether this test still counts: a later test of the surface or new concentrate replaces it." },
    (r) => {
      const lastConcentrate = at(r, "baths", "lastConcentrate", r.here("bathRow"));
      return blankIf([`${r.here("bathRow")}=""`, `NOT(ISNUMBER(${r.here("when")}))`],
        `IF(${r.here("when")}<=${lastConcentrate}+${halfMinute},"before the last concentrate",IF(${r.here("supersededAt")}<${never},"repeated later",IF(${r.here("result")}="","no result yet","stands: "&${r.here("result")})))`);
    }),
  helper({ id: "bathRow", label: "Bath row", type: "whole number", format: "0", width: 8, help: "Position in Baths." },
    (r) => positionOf(r, r.here("bath"), "baths", "bath")),
  helper({ id: "supersededAt", label: "Repeated at", type: "date and time", width: 16, help: "When the surface was next tested; the last day of the calendar if it was not." },
    (r) => {
      const next = `MINIFS(${r.all("benchTests", "when")},${where([
        [r.all("benchTests", "bath"), r.here("bath")],
        [r.all("benchTests", "surface"), r.here("surface")],
        [r.all("benchTests", "when"), after(r.here("when"))],
      ])})`;
      return blankIf([`${r.here("bath")}=""`, `NOT(ISNUMBER(${r.here("when")}))`], `IF(${next}=0,${never},${next})`);
    }),
];

export const benchTestsSheet: SheetDefinition = {
  id: "benchTests",
  name: "Bench tests",
  title: "Bench tests",
  purpose: "Does the bath clean every surface of this job? One row for each surface, before any pH is written down. The baseline waits until all pass.",
  caution: "Alkali burns skin and eyes, often without early pain: goggles, face shield, alkali-proof gloves, apron. In the eyes: flush 15 minutes at once, then a doctor. Never mix with bleach, ammonia or acid cleaners: toxic gas. Label every spray bottle with what is in it and its hazard.",
  fields: [],
  tables: [
    {
      id: "benchTests",
      name: "BenchTests",
      caption: "Bench tests",
      emptyRows: 1,
      columns,
      signals: [
        { column: "standing", when: { is: "stands: pass" }, look: "good" },
        { column: "standing", when: { is: "stands: partial" }, look: "act" },
        { column: "standing", when: { is: "stands: fail" }, look: "act" },
        { column: "standing", when: { is: "no result yet" }, look: "watch" },
      ],
    },
  ],
  arrangement: "side by side",
  tabColor: "#8A6D2F",
  pagesWide: 1,
  orientation: "landscape",
};
