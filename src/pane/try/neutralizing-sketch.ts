import { acidStages } from "../../../functions/discharge/acid-stages.ts";
import { acidTo } from "../../../functions/discharge/acid-to.ts";
import { ask, askNumber } from "../../advice/ask.ts";
import { lastReadingOf, rowFacts } from "../../advice/bath-facts.ts";
import { bathFacts } from "../../advice/bath-values.ts";
import { amount, figure } from "../../advice/wording/figures.ts";
import { acidNames } from "../../core/bath/model/acid.ts";
import { volume as volumeUnit } from "../../joblog/model/units-of.ts";
import { callText, systemCell, typedCell } from "./cells.ts";
import type { Sketch } from "./sketch.ts";

const dryAcids: readonly string[] = ["citric", "sodium bisulfate"];

/** The unit that ACIDTO gives an acid in: dry ones are weighed. */
function acidUnit(acid: string, system: "US" | "metric" | "imperial"): string {
  if (!dryAcids.includes(acid)) return volumeUnit[system];
  return system === "US" ? "lb" : "kg";
}

export const neutralizingSketch: Sketch = {
  id: "neutralizing",
  title: "Neutralizing a spent bath",
  step: "release",
  purpose: "Acid to a pH wanted. From the reading alone it is a minimum; a titration makes it an estimate.",
  fields: ({ system }) => [
    { key: "volume", label: `Bath, ${volumeUnit[system]}` },
    { key: "ph", label: "pH now, cooled" },
    { key: "target", label: "pH wanted" },
    { key: "acid", label: "Acid", choices: acidNames },
    {
      key: "purity",
      label: "Acid in the product, %",
      hint: "By weight. If blank, the usual product; acetic acid has none.",
    },
    {
      key: "titrated",
      label: "Titrated alkalinity, mg/L",
      hint: "To pH 4.5, as calcium carbonate; 1 meq/L is 50. If blank, you get a minimum only.",
    },
  ],
  proposals: ({ log, bath }) => {
    const facts = log === undefined ? undefined : bathFacts(log, bath);
    const row = log === undefined || bath === undefined ? undefined : lastReadingOf(log, bath);
    const last = row === undefined ? undefined : rowFacts(row).number("ph");
    const volume = facts?.number("workingVolume");
    return {
      volume: volume === undefined ? "" : figure(volume, 1),
      ph: last === undefined ? "" : figure(last, 2),
      target: "8.5",
      acid: "citric",
      purity: "",
      titrated: "",
    };
  },
  work: (values, { system }) => {
    const [volume = null, ph = null, target = null, titrated = null, purity = null] = [
      "volume",
      "ph",
      "target",
      "titrated",
      "purity",
    ].map((key) => typedCell(values, key));
    const acid = values["acid"] ?? "";
    if (volume === null || ph === null || target === null || acid === "") return { findings: [] };
    const asked = { volume, ph, target_ph: target, acid, alkalinity: titrated, purity };
    const needed = askNumber(acidTo, { ...asked, system });
    if (!needed.known) return { findings: [{ tone: "act", text: needed.why }] };
    const unit = acidUnit(acid, system);
    const stages = needed.value > 0 ? ask(acidStages, { amount: needed.value }) : undefined;
    const rows = stages?.known === true && Array.isArray(stages.value) ? stages.value : [];
    return {
      findings: [
        needed.value === 0
          ? { tone: "good", text: "The bath is at or under that pH already." }
          : {
              tone: titrated === null ? "watch" : "good",
              text: `${titrated === null ? "At least " : "About "}${amount(needed.value)} ${unit}${titrated === null ? ". A used bath of this pH often holds several times more: titrate it." : "."}`,
            },
      ],
      ...(rows.length === 0
        ? {}
        : {
            table: {
              headers: ["Stage", unit, "Then"],
              rows: rows.map(([part, words], index) => [
                String(index + 1),
                typeof part === "number" ? amount(part) : "",
                String(words ?? ""),
              ]),
            },
          }),
      formula: `=${callText(acidTo, { ...asked, system: systemCell(system) })}`,
    };
  },
};
