import { makeStyles } from "@fluentui/react-components";

/** Fluent's controls keep a width of their own; in a grid they take the cell's. */
export const useControlStyles = makeStyles({
  control: { width: "100%", minWidth: 0, "& input, & select": { width: "100%", minWidth: 0 } },
});
