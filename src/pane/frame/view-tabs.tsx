import { createFocusOutlineStyle, makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import type { FluentIcon } from "@fluentui/react-icons";
import { ClockRegular } from "@fluentui/react-icons/svg/clock";
import { EditRegular } from "@fluentui/react-icons/svg/edit";
import { MoreHorizontalRegular } from "@fluentui/react-icons/svg/more-horizontal";
import { ReceiptMoneyRegular } from "@fluentui/react-icons/svg/receipt-money";
import { useRef } from "react";

/** What is wanted at the tank and for a claim has a tab; the rest is behind the last one. */
type Tab = "now" | "record" | "claims" | "more";

/** A view that the list behind More opens. */
export type FurtherView = "try" | "functions" | "shop" | "about";

export type View = Tab | FurtherView;

interface ViewTab {
  readonly view: Tab;
  readonly name: string;
  readonly icon: FluentIcon;
}

const tabs: readonly ViewTab[] = [
  { view: "now", name: "Now", icon: ClockRegular },
  { view: "record", name: "Record", icon: EditRegular },
  { view: "claims", name: "Claims", icon: ReceiptMoneyRegular },
  { view: "more", name: "More", icon: MoreHorizontalRegular },
];

const tabOf = (view: View): Tab => tabs.find((tab) => tab.view === view)?.view ?? "more";

const useStyles = makeStyles({
  // Equal columns, but none narrower than its word in a wide typeface.
  list: { display: "grid", gridTemplateColumns: "repeat(4, minmax(max-content, 1fr))" },
  tab: {
    display: "flex",
    alignItems: "center",
    justifyContent: "center",
    gap: "5px",
    minHeight: "48px",
    padding: "3px 4px 0",
    border: "none",
    borderBottom: "3px solid transparent",
    backgroundColor: "transparent",
    color: tokens.colorNeutralForeground2,
    fontFamily: "inherit",
    fontSize: "13px",
    lineHeight: "18px",
    cursor: "pointer",
    "& svg": { fontSize: "18px" },
    "@media (min-width: 380px)": { gap: tokens.spacingHorizontalS, fontSize: tokens.fontSizeBase300 },
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

const idOf = (tab: Tab): string => `tab-${tab}`;

/** The id of a view's tab; the panel below is labelled by it. */
export const tabId = (view: View): string => idOf(tabOf(view));

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
 * the focus alone, Enter or the space bar chooses, since a form that is being filled in should not leave the screen at a slip.
 */
export function ViewTabs({
  chosen,
  onChoose,
}: {
  readonly chosen: View;
  readonly onChoose: (view: Tab) => void;
}): React.JSX.Element {
  const styles = useStyles();
  const here = tabOf(chosen);
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
          id={idOf(view)}
          type="button"
          role="tab"
          aria-selected={view === here}
          aria-controls="view"
          tabIndex={view === here ? 0 : -1}
          className={mergeClasses(styles.tab, view === here && styles.chosen)}
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
