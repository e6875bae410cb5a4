import { makeStyles, tokens } from "@fluentui/react-components";

/** Label, control, problem and hint. */
const fieldParts = 4;

/**
 * Fluent's controls keep a width of their own; in a grid they take the cell's. As tall as a gloved finger
 * wants, and framed all around while they have the focus.
 */
export const useControlStyles = makeStyles({
  control: {
    width: "100%",
    minWidth: 0,
    minHeight: "44px",
    borderRadius: tokens.borderRadiusMedium,
    "& input, & select": { width: "100%", minWidth: 0 },
    "& select": { height: "44px", paddingLeft: tokens.spacingHorizontalM, paddingRight: "36px" },
    ":focus-within": {
      outlineStyle: "solid",
      outlineWidth: "2px",
      outlineColor: tokens.colorCompoundBrandStroke,
      outlineOffset: "1px",
    },
  },
  // Fields side by side share the lines of their parts, so that their controls line up.
  cell: {
    gridRow: `span ${String(fieldParts)}`,
    gridTemplateRows: "subgrid",
    rowGap: 0,
    paddingBottom: tokens.spacingVerticalM,
  },
  wideCell: { gridColumn: "1 / -1" },
});
