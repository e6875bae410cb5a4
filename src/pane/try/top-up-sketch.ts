import { trigger } from "../../../functions/threshold/trigger.ts";
import { topUpRange } from "../../../functions/top-up/top-up-range.ts";
import { askNumber, askRow } from "../../advice/ask.ts";
import { lastReadingOf, rowFacts } from "../../advice/bath-facts.ts";
import { alkalinityOf, bathFacts, dropOf } from "../../advice/bath-values.ts";
import { shopsDrop, shopsHouseShare, shopsMeterAccuracy } from "../../advice/shop-values.ts";
import { amount, figure, percent, ph } from "../../advice/wording/figures.ts";
import { usualHouseShare, usualMeterAccuracy } from "../../core/bath/common-practice.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { temperature as temperatureUnit, volume as volumeUnit } from "../../joblog/model/units-of.ts";
import { builders } from "../../joblog/model/words.ts";
import { callText, degreesText, systemCell, type TypedCell, typedCell } from "./cells.ts";
import type { Sketch } from "./sketch.ts";

/** The shop's largest first addition; left out where it is the function's own. */
function shareCell(log: LogSnapshot | undefined): TypedCell {
  const share = shopsHouseShare(log);
  return share === usualHouseShare ? null : share;
}

/** What the shop lets its meter be off; left out where it is the function's own. */
function accuracyCell(log: LogSnapshot | undefined): TypedCell {
  const accuracy = shopsMeterAccuracy(log);
  return accuracy === usualMeterAccuracy ? null : accuracy;
}

export const topUpSketch: Sketch = {
  id: "top-up",
  title: "Top-up for a reading",
  step: "addition",
  purpose: "How much brings a bath back to its baseline: a range, because pH alone cannot know more.",
  fields: ({ system }) => [
    { key: "dose", label: `Opening dose, ${volumeUnit[system]}` },
    { key: "baseline", label: "Baseline pH" },
    { key: "reading", label: "Reading, pH" },
    { key: "temperature", label: `Both read at, ${temperatureUnit[system]}` },
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
      dose: shown(facts?.number("openingDose"), 3),
      baseline: shown(facts?.number("baseline"), 2),
      reading: shown(last?.number("phAtBaseline") ?? last?.number("ph"), 2),
      temperature: degreesText(facts?.number("baselineTemperature"), system),
      builder: facts?.text("builderUsed") ?? "unknown",
      alkalinity: alkalinity === null ? "" : String(alkalinity),
    };
  },
  work: (values, { log, bath, system }) => {
    const [dose, baseline, reading, builder, temperature, alkalinity] = [
      "dose",
      "baseline",
      "reading",
      "builder",
      "temperature",
      "alkalinity",
    ].map((key) => typedCell(values, key));
    if (dose === null || baseline === null || reading === null) return { findings: [] };
    const asked = {
      opening_dose: dose,
      baseline,
      reading,
      builder,
      temperature,
      alkalinity,
      house_share: shareCell(log),
      meter_accuracy: accuracyCell(log),
    };
    const range = askRow(topUpRange, { ...asked, system: systemCell(system) });
    if (!range.known) return { findings: [{ tone: "act", text: range.why }] };
    const [low = 0, best = 0, high = 0, first = 0] = range.value;
    const unit = volumeUnit[system];
    const facts = log === undefined ? undefined : bathFacts(log, bath);
    const drop = facts === undefined ? shopsDrop(log) : dropOf(facts);
    const due = askNumber(trigger, { baseline, drop });
    return {
      findings: [
        best === 0
          ? { tone: "good", text: "At or above the baseline: nothing to add." }
          : { tone: "good", text: `First addition ${amount(first)} ${unit}, then mix and read.` },
        {
          tone: "plain",
          text: `In all likely ${amount(low)} to ${amount(high)} ${unit}, best estimate ${amount(best)}${typeof dose === "number" ? `, ${percent(best / dose)} of the opening dose` : ""}.`,
        },
        ...(due.known
          ? [
              {
                tone: "plain",
                text: `Top-up due at ${ph(due.value)} or under (drop allowed ${figure(drop, 2, 2)}).`,
              } as const,
            ]
          : []),
      ],
      // The formula fills four cells in this order, and no cell says what they are.
      table: {
        headers: [`Low, ${unit}`, `Best, ${unit}`, `High, ${unit}`, `First, ${unit}`],
        rows: [[low, best, high, first].map(amount)],
      },
      formula: `=${callText(topUpRange, { ...asked, system: systemCell(system) })}`,
    };
  },
};
