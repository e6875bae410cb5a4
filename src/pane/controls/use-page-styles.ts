import { makeStyles, tokens } from "@fluentui/react-components";

/** What all views share: one column, generous gaps, targets of at least 44 px. */
export const usePageStyles = makeStyles({
  page: { display: "grid", gridTemplateColumns: "minmax(0, 1fr)", rowGap: tokens.spacingVerticalL },
  title: {
    margin: 0,
    outlineStyle: "none",
    fontSize: tokens.fontSizeBase500,
    lineHeight: tokens.lineHeightBase500,
    fontWeight: tokens.fontWeightSemibold,
  },
  section: {
    margin: 0,
    fontSize: tokens.fontSizeBase400,
    lineHeight: tokens.lineHeightBase400,
    fontWeight: tokens.fontWeightSemibold,
  },
  quiet: { margin: 0, color: tokens.colorNeutralForeground3 },
  caution: {
    margin: 0,
    padding: `${tokens.spacingVerticalS} ${tokens.spacingHorizontalM}`,
    borderLeft: `4px solid ${tokens.colorPaletteMarigoldBorderActive}`,
    backgroundColor: `color-mix(in srgb, ${tokens.colorPaletteMarigoldBorderActive} 12%, ${tokens.colorNeutralBackground1})`,
    borderRadius: `0 ${tokens.borderRadiusMedium} ${tokens.borderRadiusMedium} 0`,
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
  },
  doubts: {
    listStyleType: "none",
    display: "grid",
    rowGap: tokens.spacingVerticalS,
    fontWeight: tokens.fontWeightSemibold,
  },
  wrong: { margin: 0, color: tokens.colorPaletteRedForeground1, fontWeight: tokens.fontWeightSemibold },
  list: { margin: 0, paddingLeft: "20px", display: "grid", rowGap: tokens.spacingVerticalXS, overflowWrap: "anywhere" },
  /** A button that says what it leads to: its name, and a line beneath. */
  choiceName: {
    display: "block",
    fontWeight: tokens.fontWeightSemibold,
    fontSize: tokens.fontSizeBase400,
    lineHeight: tokens.lineHeightBase400,
  },
  choiceAbout: {
    display: "block",
    color: tokens.colorNeutralForeground3,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
  },
  big: { minHeight: "44px", maxWidth: "none", width: "100%" },
  target: { minHeight: "44px" },
  back: { minHeight: "44px", justifySelf: "start", marginLeft: "-8px" },
  sides: { display: "flex", justifyContent: "space-between", alignItems: "center" },
});
