import { dose } from "../../../functions/charge/dose.ts";
import { strengthOf } from "../../../functions/charge/strength-of.ts";
import { bothReadings, inJugs } from "../../advice/amounts/charge-dose.ts";
import { askNumber } from "../../advice/ask.ts";
import { bathFacts } from "../../advice/bath-values.ts";
import { amount, figure } from "../../advice/wording/figures.ts";
import { volume as volumeUnit } from "../../joblog/model/units-of.ts";
import { callText, systemCell, typedCell } from "./cells.ts";
import type { Sketch } from "./sketch.ts";

/** The same strength as labels write it. */
function otherWords(poured: number, volume: number | string): string {
  const said = (["parts", "%", "mL/L", "fl oz/gal"] as const).map((word) => ({
    word,
    answer: askNumber(strengthOf, { dose: poured, volume, as: word }),
  }));
  return said
    .flatMap(({ word, answer }) => {
      if (!answer.known) return [];
      if (word === "parts") return [`1+${figure(answer.value, 1)}`];
      return [word === "%" ? `${figure(answer.value, 2)}%` : `${figure(answer.value, 2)} ${word}`];
    })
    .join(" = ");
}

export const doseSketch: Sketch = {
  id: "dose",
  title: "Dose for a strength",
  step: "charge",
  purpose: "In any way a label writes it: 1+28, 1 in 28, 2.5%, 3 fl oz/gal, 25 mL/L.",
  fields: ({ system }) => [
    { key: "volume", label: `Bath, ${volumeUnit[system]}`, hint: "Finished bath. Any unit: 60 gal, 227 L." },
    { key: "rate", label: "Strength", hint: "1+28 is 1 part and 28 parts of water." },
  ],
  proposals: ({ log, bath }) => {
    const facts = log === undefined ? undefined : bathFacts(log, bath);
    const volume = facts?.number("workingVolume");
    return { volume: volume === undefined ? "" : figure(volume, 3), rate: facts?.text("strength") ?? "1+40" };
  },
  work: (values, { system }) => {
    const [volume, rate] = [typedCell(values, "volume"), typedCell(values, "rate")];
    if (volume === null || rate === null) return { findings: [] };
    const needed = askNumber(dose, { volume, rate, system });
    if (!needed.known) return { findings: [{ tone: "act", text: needed.why }] };
    return {
      findings: [
        { tone: "good", text: `Concentrate: ${inJugs(needed.value, system)}.` },
        ...(typeof volume === "number"
          ? [
              ...bothReadings(String(rate), volume, needed.value, system),
              {
                tone: "plain",
                text: `${otherWords(needed.value, volume)}. Water: ${amount(volume - needed.value)} ${volumeUnit[system]}.`,
              } as const,
            ]
          : []),
      ],
      formula: `=${callText(dose, { volume, rate, system: systemCell(system) })}`,
    };
  },
};
