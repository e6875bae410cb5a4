import { phAt } from "../../../functions/ph/ph-at.ts";
import { verdict as verdictFunction } from "../../../functions/threshold/verdict.ts";
import { askNumber, askText } from "../../advice/ask.ts";
import { lastReadingOf, rowFacts } from "../../advice/bath-facts.ts";
import { alkalinityOf, bathFacts, dropOf } from "../../advice/bath-values.ts";
import { shopsDrop } from "../../advice/shop-values.ts";
import { figure, ph as phFigure } from "../../advice/wording/figures.ts";
import { temperature as temperatureUnit } from "../../joblog/model/units-of.ts";
import { builders } from "../../joblog/model/words.ts";
import { callText, degreesText, systemCell, typedCell } from "./cells.ts";
import type { Sketch } from "./sketch.ts";

export const temperatureSketch: Sketch = {
  id: "temperature",
  title: "Hot and cold readings",
  purpose: "What the same bath reads at another temperature with a perfect meter, and whether that calls for a top-up.",
  fields: ({ system }) => [
    { key: "ph", label: "Reading, pH" },
    { key: "from", label: `Sample temp, ${temperatureUnit[system]}` },
    { key: "baseline", label: "Baseline pH" },
    { key: "to", label: `Baseline read at, ${temperatureUnit[system]}` },
    { key: "builder", label: "Builder", choices: builders },
    { key: "alkalinity", label: "Water's alkalinity, mg/L" },
  ],
  proposals: ({ log, bath, system }) => {
    const facts = log === undefined ? undefined : bathFacts(log, bath);
    const row = log === undefined || bath === undefined ? undefined : lastReadingOf(log, bath);
    const last = row === undefined ? undefined : rowFacts(row);
    const shown = (value: number | undefined, digits: number): string =>
      value === undefined ? "" : figure(value, digits);
    const alkalinity = facts === undefined ? null : alkalinityOf(facts);
    return {
      ph: shown(last?.number("ph"), 2),
      from: system === "US" ? "127.6" : "53.1",
      baseline: shown(facts?.number("baseline"), 2),
      to: degreesText(facts?.number("baselineTemperature"), system) || (system === "US" ? "77" : "25"),
      builder: facts?.text("builderUsed") ?? "unknown",
      alkalinity: alkalinity === null ? "" : String(alkalinity),
    };
  },
  work: (values, { log, bath, system }) => {
    const [ph = null, from = null, baseline = null, to = null, builder = null, alkalinity = null] = [
      "ph",
      "from",
      "baseline",
      "to",
      "builder",
      "alkalinity",
    ].map((key) => typedCell(values, key));
    if (ph === null || from === null || to === null) return { findings: [] };
    const asked = { ph, from_temperature: from, to_temperature: to, builder, alkalinity };
    const there = askNumber(phAt, { ...asked, system: systemCell(system) });
    if (!there.known) return { findings: [{ tone: "act", text: there.why }] };
    const facts = log === undefined ? undefined : bathFacts(log, bath);
    const drop = facts === undefined ? shopsDrop(log) : dropOf(facts);
    const verdict =
      baseline === null
        ? undefined
        : askText(verdictFunction, {
            reading: ph,
            baseline,
            drop,
            baseline_temperature: to,
            reading_temperature: from,
            builder,
            alkalinity,
            system: systemCell(system),
          });
    return {
      findings: [
        { tone: "good", text: `Cooled or warmed to the baseline's temperature: about ${phFigure(there.value)}.` },
        ...(verdict === undefined
          ? []
          : [
              {
                tone: "plain",
                text: verdict.known
                  ? `Against the baseline: ${verdict.value}. The drop allowed is ${figure(drop, 2, 2)}.`
                  : verdict.why,
              } as const,
            ]),
        {
          tone: "plain",
          text: "A used bath moves less with temperature than the fresh one this is worked out for. To be sure, cool a sample.",
        },
      ],
      formula: `=${callText(phAt, { ...asked, system: systemCell(system) })}`,
    };
  },
};
