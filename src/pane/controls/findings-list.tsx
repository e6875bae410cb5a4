import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { CheckmarkCircleRegular } from "@fluentui/react-icons/svg/checkmark-circle";
import { ErrorCircleRegular } from "@fluentui/react-icons/svg/error-circle";
import { InfoRegular } from "@fluentui/react-icons/svg/info";
import { WarningRegular } from "@fluentui/react-icons/svg/warning";

import type { Finding, Tone } from "../../advice/finding.ts";

const useStyles = makeStyles({
  panel: {
    // Drawn only where a contrast theme takes the background away.
    border: "1px solid transparent",
    backgroundColor: tokens.colorNeutralBackground3,
    borderRadius: tokens.borderRadiusLarge,
    padding: tokens.spacingHorizontalM,
  },
  heading: {
    margin: `0 0 ${tokens.spacingVerticalXS}`,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    fontWeight: tokens.fontWeightSemibold,
    color: tokens.colorNeutralForeground3,
  },
  list: { listStyleType: "none", margin: 0, padding: 0, display: "grid", rowGap: tokens.spacingVerticalXS },
  item: {
    display: "grid",
    gridTemplateColumns: "20px minmax(0, 1fr)",
    columnGap: tokens.spacingHorizontalS,
    alignItems: "start",
  },
  icon: { fontSize: "20px" },
  strong: { fontWeight: tokens.fontWeightSemibold },
});

/** The color of a tone's mark. */
export const useToneStyles = makeStyles({
  plain: { color: tokens.colorNeutralForeground3 },
  good: { color: tokens.colorPaletteGreenForeground1 },
  watch: { color: tokens.colorPaletteDarkOrangeForeground1 },
  act: { color: tokens.colorPaletteRedForeground1 },
});

export const toneIcons: Readonly<Record<Tone, typeof InfoRegular>> = {
  plain: InfoRegular,
  good: CheckmarkCircleRegular,
  watch: WarningRegular,
  act: ErrorCircleRegular,
};

/** What the entry means, worked out while it is typed; read out politely when it changes. */
export function FindingsList({ findings }: { readonly findings: readonly Finding[] }): React.JSX.Element {
  const styles = useStyles();
  const tones = useToneStyles();
  return (
    <section role="status" aria-label="What this means" hidden={findings.length === 0} className={styles.panel}>
      <h3 className={styles.heading}>What this means</h3>
      <ul className={styles.list}>
        {findings.map(({ tone, text }) => {
          const Icon = toneIcons[tone];
          return (
            <li key={text} className={styles.item}>
              <Icon aria-hidden className={mergeClasses(styles.icon, tones[tone])} />
              <span className={tone === "plain" ? undefined : styles.strong}>{text}</span>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
