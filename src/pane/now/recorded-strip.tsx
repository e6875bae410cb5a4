import { makeStyles, tokens } from "@fluentui/react-components";
import { CheckmarkCircleRegular } from "@fluentui/react-icons/svg/checkmark-circle";

import { useFocusOnShow } from "../controls/use-focus-on-show.ts";
import type { LastEntry } from "../record/take-back.ts";
import { TakeBackButton } from "../record/take-back-button.tsx";

const useStyles = makeStyles({
  strip: {
    display: "grid",
    rowGap: tokens.spacingVerticalS,
    padding: tokens.spacingHorizontalM,
    border: "1px solid transparent",
    borderRadius: tokens.borderRadiusXLarge,
    backgroundColor: tokens.colorNeutralBackground3,
  },
  said: { display: "flex", columnGap: tokens.spacingHorizontalS, margin: 0, outlineStyle: "none" },
  tick: { fontSize: "24px", color: tokens.colorPaletteGreenForeground1, flexShrink: 0 },
});

/** What was recorded just now, and the way back for as long as it is the last entry. */
export function RecordedStrip({
  recorded,
  onTakenBack,
}: {
  readonly recorded: LastEntry;
  readonly onTakenBack: () => Promise<void>;
}): React.JSX.Element {
  const styles = useStyles();
  const said = useFocusOnShow<HTMLParagraphElement>(true);
  return (
    <section className={styles.strip} aria-label="Recorded">
      <p ref={said} tabIndex={-1} className={styles.said}>
        <CheckmarkCircleRegular aria-hidden className={styles.tick} />
        <span>{`Recorded: ${recorded.what}.`}</span>
      </p>
      <TakeBackButton entry={recorded} onTakenBack={onTakenBack} />
    </section>
  );
}
