/** What a sample reads at the temperature of its bath's baseline, as the Readings sheet works it out. */
import { phAt } from "../../../functions/ph/ph-at.ts";
import { temperature as temperatureUnit } from "../../joblog/model/units-of.ts";
import { builders } from "../../joblog/model/words.ts";
import { askNumber } from "../ask.ts";
import type { RowFacts } from "../bath-facts.ts";
import { alkalinityOf } from "../bath-values.ts";
import type { DraftedRow } from "../drafted-row.ts";
import type { Finding } from "../finding.ts";
import type { LogContext } from "../log-context.ts";
import { degrees, ph as phFigure } from "../wording/figures.ts";

const unknown = "unknown";

/** A reading, recorded or still to be. */
type Reading = Pick<DraftedRow<"readings">, "number">;

/** The same sample at the baseline's temperature, by every builder that the bath may have. */
function byOtherBuilders(bath: RowFacts<"baths">, reading: Reading, { system }: LogContext): readonly number[] {
  if ((bath.text("builderUsed") ?? unknown) !== unknown) return [];
  return builders
    .filter((builder) => builder !== unknown)
    .flatMap((builder) => {
      const answer = askNumber(phAt, {
        ph: reading.number("phCorrected"),
        from_temperature: reading.number("temperature"),
        to_temperature: bath.number("baselineTemperature"),
        builder,
        alkalinity: alkalinityOf(bath),
        system,
      });
      return answer.known ? [answer.value] : [];
    });
}

/**
 * The pH that an addition is judged by, to the hundredth; undefined for a sample too far from the
 * baseline's temperature. Without a baseline it is the pH as read.
 */
export function phForRecovery(reading: Reading): number | undefined {
  const ph = reading.number("chartablePh");
  return ph === undefined ? undefined : Math.round(ph * 100) / 100;
}

/** Says what the sample reads at the baseline's temperature where that differs from what the meter shows. */
export function shiftFinding(
  bath: RowFacts<"baths">,
  reading: DraftedRow<"readings">,
  context: LogContext,
): readonly Finding[] {
  const [to, best] = [bath.number("baselineTemperature"), reading.number("phAtBaseline")];
  if (to === undefined || best === undefined || phFigure(best) === phFigure(reading.number("ph") ?? best)) return [];
  const all = [best, ...byOtherBuilders(bath, reading, context)];
  const [low, high] = [phFigure(Math.min(...all)), phFigure(Math.max(...all))];
  const band = low === high ? "" : `, ${low} to ${high} as its builder is not known`;
  // A bath that has taken up soil and carbon dioxide moves less with temperature than the fresh one that the shift is worked out for.
  const worn = phForRecovery(reading) === undefined ? " A used bath may be lower: cool a sample to be sure." : "";
  return [
    {
      tone: "plain",
      text: `At ${degrees(to)} ${temperatureUnit[context.system]}, as the baseline was read, this is about ${phFigure(best)}${band}.${worn}`,
    },
  ];
}
