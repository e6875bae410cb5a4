import { createFocusOutlineStyle, makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import type { FluentIcon } from "@fluentui/react-icons";
import { BuildingShopRegular } from "@fluentui/react-icons/svg/building-shop";
import { ClockRegular } from "@fluentui/react-icons/svg/clock";
import { EditRegular } from "@fluentui/react-icons/svg/edit";
import { LightbulbRegular } from "@fluentui/react-icons/svg/lightbulb";
import { MathFormulaRegular } from "@fluentui/react-icons/svg/math-formula";
import { ReceiptMoneyRegular } from "@fluentui/react-icons/svg/receipt-money";
import { useRef } from "react";

export type View = "now" | "record" | "try" | "claims" | "functions" | "shop";

interface ViewTab {
  readonly view: View;
  readonly name: string;
  readonly icon: FluentIcon;
}

const tabs: readonly ViewTab[] = [
  { view: "now", name: "Now", icon: ClockRegular },
  { view: "record", name: "Record", icon: EditRegular },
  { view: "try", name: "Try", icon: LightbulbRegular },
  { view: "claims", name: "Claims", icon: ReceiptMoneyRegular },
  { view: "functions", name: "Functions", icon: MathFormulaRegular },
  { view: "shop", name: "Shop", icon: BuildingShopRegular },
];

const useStyles = makeStyles({
  // Equal columns, but none narrower than its word in a wide typeface.
  list: { display: "grid", gridTemplateColumns: "repeat(6, minmax(max-content, 1fr))" },
  tab: {
    display: "flex",
    flexDirection: "column",
    alignItems: "center",
    justifyContent: "center",
    gap: "2px",
    minHeight: "52px",
    padding: "3px 0 0",
    border: "none",
    borderBottom: "3px solid transparent",
    backgroundColor: "transparent",
    color: tokens.colorNeutralForeground2,
    fontFamily: "inherit",
    fontSize: "11px",
    lineHeight: "14px",
    cursor: "pointer",
    "& svg": { fontSize: "20px" },
    "@media (min-width: 380px)": { fontSize: tokens.fontSizeBase200 },
    "@media (min-width: 560px)": {
      flexDirection: "row",
      gap: tokens.spacingHorizontalXS,
      minHeight: "48px",
      fontSize: tokens.fontSizeBase300,
    },
    ":hover": { color: tokens.colorNeutralForeground1, borderBottomColor: tokens.colorNeutralStroke1 },
    // A transparent border is drawn in the text's color there, and every tab would look chosen.
    "@media (forced-colors: active)": { borderBottomColor: "Canvas" },
    ...createFocusOutlineStyle(),
  },
  chosen: {
    color: tokens.colorBrandForeground1,
    fontWeight: tokens.fontWeightSemibold,
    borderBottomColor: tokens.colorCompoundBrandStroke,
    ":hover": { color: tokens.colorBrandForeground1, borderBottomColor: tokens.colorCompoundBrandStroke },
    "@media (forced-colors: active)": { borderBottomColor: "Highlight" },
  },
});

/** The id of a view's tab; the panel below is labelled by it. */
export const tabId = (view: View): string => `tab-${view}`;

/** The tab to which a key moves the focus from one of `count`, beginning anew at the ends; undefined for other keys. */
export function tabByKey(key: string, at: number, count: number): number | undefined {
  switch (key) {
    case "ArrowRight":
      return (at + 1) % count;
    case "ArrowLeft":
      return (at + count - 1) % count;
    case "Home":
      return 0;
    case "End":
      return count - 1;
    default:
      return undefined;
  }
}

/**
 * The pane's views as a tab list of the ARIA Authoring Practices with manual activation: arrows, Home and End move
 * the focus alone, Enter or the space bar chooses, since another view throws a form that is half filled in away.
 */
export function ViewTabs({
  chosen,
  onChoose,
}: {
  readonly chosen: View;
  readonly onChoose: (view: View) => void;
}): React.JSX.Element {
  const styles = useStyles();
  const list = useRef<HTMLDivElement>(null);
  return (
    <div
      ref={list}
      role="tablist"
      aria-label="Views"
      className={styles.list}
      onKeyDown={(event) => {
        if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
        const buttons = [...(list.current?.querySelectorAll<HTMLElement>("[role=tab]") ?? [])];
        const at = buttons.findIndex((button) => button === event.target);
        const next = at < 0 ? undefined : tabByKey(event.key, at, buttons.length);
        if (next === undefined) return;
        event.preventDefault();
        buttons[next]?.focus();
      }}
    >
      {tabs.map(({ view, name, icon: Icon }) => (
        <button
          key={view}
          id={tabId(view)}
          type="button"
          role="tab"
          aria-selected={view === chosen}
          aria-controls="view"
          tabIndex={view === chosen ? 0 : -1}
          className={mergeClasses(styles.tab, view === chosen && styles.chosen)}
          onClick={() => {
            onChoose(view);
          }}
        >
          <Icon aria-hidden />
          {name}
        </button>
      ))}
    </div>
  );
}
