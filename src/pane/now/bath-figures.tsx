import { makeStyles, tokens } from "@fluentui/react-components";

import { findRow, lastReadingOf, rowFacts } from "../../advice/bath-facts.ts";
import { amount, degrees, moneyIn, percent, ph } from "../../advice/wording/figures.ts";
import { shortMoment } from "../../advice/wording/moments.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { temperature as temperatureUnit, volume as volumeUnit } from "../../joblog/model/units-of.ts";

const useStyles = makeStyles({
  grid: {
    display: "grid",
    gridTemplateColumns: "repeat(2, minmax(0, 1fr))",
    "@media (min-width: 640px)": { gridTemplateColumns: "repeat(4, minmax(0, 1fr))" },
    gap: tokens.spacingHorizontalS,
    margin: 0,
  },
  // The frame is drawn only where a contrast theme takes the background away.
  cell: {
    border: "1px solid transparent",
    backgroundColor: tokens.colorNeutralBackground3,
    borderRadius: tokens.borderRadiusLarge,
    padding: `${tokens.spacingVerticalS} ${tokens.spacingHorizontalM}`,
  },
  name: {
    color: tokens.colorNeutralForeground3,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
  },
  value: {
    margin: 0,
    fontSize: tokens.fontSizeBase500,
    lineHeight: tokens.lineHeightBase500,
    fontWeight: tokens.fontWeightSemibold,
    fontVariantNumeric: "tabular-nums",
  },
  more: {
    display: "block",
    color: tokens.colorNeutralForeground3,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    fontWeight: tokens.fontWeightRegular,
  },
});

export interface Figure {
  readonly name: string;
  readonly value: string;
  readonly more: string;
}

export function figuresOf(log: LogSnapshot, bath: string, system: UnitSystem): readonly Figure[] {
  const row = findRow(log, "baths", "bath", bath);
  if (row === undefined) return [];
  const facts = rowFacts(row);
  const reading = lastReadingOf(log, bath);
  const last = reading === undefined ? undefined : rowFacts(reading);
  const [baseline, baselineTemperature, lastPh, readAt, sample, trigger, cost, topUps] = [
    facts.number("baseline"),
    facts.number("baselineTemperature"),
    last?.number("ph"),
    last?.number("when"),
    last?.number("temperature"),
    last?.number("trigger") ?? facts.number("trigger"),
    facts.number("cost"),
    facts.number("topUpTotal"),
  ];
  const at = (value: number): string => `${degrees(value)}\u00a0${temperatureUnit[system]}`;
  const share = facts.number("topUpShare");
  return [
    {
      name: "Baseline pH",
      value: baseline === undefined ? "not set" : ph(baseline),
      more: baselineTemperature === undefined ? "" : `at ${at(baselineTemperature)}`,
    },
    {
      name: "Trigger pH",
      value: trigger === undefined ? "not set" : ph(trigger),
      more: trigger === undefined || sample === undefined ? "" : `for the sample’s ${at(sample)}`,
    },
    {
      name: "Last reading, pH",
      value: lastPh === undefined ? "none" : ph(lastPh),
      more: [
        readAt === undefined ? "" : shortMoment(readAt).replace(" ", "\u00a0"),
        sample === undefined ? "" : `at ${at(sample)}`,
      ]
        .filter((one) => one !== "")
        .join(" "),
    },
    {
      name: "Cost so far",
      value: cost === undefined ? "not known" : moneyIn(cost, log.fields.currency),
      more:
        topUps === undefined || share === undefined || topUps === 0
          ? "no top-up yet"
          : `topped up ${amount(topUps)} ${volumeUnit[system]}, ${percent(share)} of the opening dose`,
    },
  ];
}

/** The four figures a person asks for first. */
export function BathFigures({ figures }: { readonly figures: readonly Figure[] }): React.JSX.Element {
  const styles = useStyles();
  return (
    <dl className={styles.grid}>
      {figures.map(({ name, value, more }) => (
        <div key={name} className={styles.cell}>
          <dt className={styles.name}>{name}</dt>
          <dd className={styles.value}>
            {value}
            {more === "" ? null : <span className={styles.more}>{more}</span>}
          </dd>
        </div>
      ))}
    </dl>
  );
}
