import { nextStep } from "../../../src/advice/next-step/next-step.ts";
import type { UnitSystem } from "../../../src/core/units/unit-system.ts";
import type { Played } from "../../../src/pane/demo/play-week.ts";
import { serial } from "../week/played-week.ts";

const figure = /[-−+]?\d+(?:[.,]\d+)*/g;
/** The longer words first: "imperial gal" is one unit. */
const unit = /\b(?:imperial gal|US gal|US fl oz|gal|mL|L|lb|kg|g|in|cm|ft²|m²)(?![\w²])|°[FC]/g;

/** A sentence without its figures and units. */
function plain(text: string): string {
  return text
    .replaceAll(figure, "#")
    .replaceAll(unit, "unit")
    .replaceAll(/# unit \(# unit\)/g, "# unit");
}

/** What a form said of an entry just before it was recorded, and what Now then said of every bath, without figures and units. */
export function said({ event, filled, log }: Played, system: UnitSystem): readonly string[] {
  const { findings, doubts = [], recorded } = filled.meaning;
  const steps = log.rows.baths.map(({ cells }) => nextStep(log, String(cells.bath), system, serial(event.at)));
  return [
    ...findings.map(({ tone, text }) => `${tone}: ${plain(text)}`),
    ...doubts.map(plain),
    plain(recorded),
    ...steps.flatMap(({ kind, urgent, sentence, reason = "", overdue }) => [
      `${kind}, ${urgent ? "urgent" : "calm"}: ${plain(sentence)} ${plain(reason)}`,
      ...overdue.map(({ text }) => plain(text)),
    ]),
  ];
}
