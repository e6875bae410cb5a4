import { FluentProvider, makeStyles, Spinner, tokens } from "@fluentui/react-components";
import { useMemo, useState } from "react";

import { bathIds, usualBath } from "../advice/bath-values.ts";
import { presentOf } from "../advice/log-clock.ts";
import type { LogContext } from "../advice/log-context.ts";
import { fieldTextNow } from "../advice/wording/moments.ts";
import { arithmeticAid } from "../core/safety/cautions.ts";
import { type UnitSystem, unitSystems } from "../core/units/unit-system.ts";
import type { LogSnapshot } from "../joblog/model/log-snapshot.ts";
import { ProblemBar } from "./controls/problem-bar.tsx";
import { HoldLooksContext } from "./controls/use-long-work.ts";
import { usePageStyles } from "./controls/use-page-styles.ts";
import { CautionsContext, cautionsOn } from "./frame/cautions-today.ts";
import { FaultView } from "./frame/fault-view.tsx";
import { FiguresContext } from "./frame/figures-context.ts";
import {
  LazyAboutView,
  LazyAdoptView,
  LazyClaimsView,
  LazyFunctionsView,
  LazyMoreView,
  LazyProblemView,
  LazyRecordView,
  LazyShopView,
  LazyStartView,
  LazyTour,
  LazyTryView,
  LazyTypedOver,
  LazyUnknownFunctions,
} from "./frame/lazy-views.ts";
import { onThisDevice } from "./frame/on-this-device.ts";
import { darkTheme } from "./frame/pane-theme.ts";
import { type LogStore, type ReadLog, useLog } from "./frame/use-log.ts";
import { usePaneTheme } from "./frame/use-pane-theme.ts";
import { ViewBoundary } from "./frame/view-boundary.tsx";
import { tabId, type View, ViewTabs } from "./frame/view-tabs.tsx";
import { NowView } from "./now/now-view.tsx";
import { DraftsContext, draftsOn } from "./record/drafts.ts";
import type { EntryId } from "./record/forms.ts";
import type { LastEntry } from "./record/take-back.ts";

const useStyles = makeStyles({
  provider: { minHeight: "100vh", backgroundColor: tokens.colorNeutralBackground1 },
  // Its two parts lie in the page by themselves: the job scrolls away, the tabs stay.
  head: { display: "contents" },
  tabs: {
    position: "sticky",
    top: 0,
    zIndex: 1,
    backgroundColor: tokens.colorNeutralBackground1,
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
    // Over a phone's keyboard the room is for the fields.
    "@media (max-height: 560px)": { position: "static" },
  },
  job: {
    margin: 0,
    padding: `${tokens.spacingVerticalS} 44px 0 ${tokens.spacingHorizontalL}`,
    color: tokens.colorNeutralForeground3,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
    fontWeight: tokens.fontWeightRegular,
    display: "flex",
    flexWrap: "wrap",
    columnGap: tokens.spacingHorizontalM,
    overflowWrap: "anywhere",
  },
  number: { fontWeight: tokens.fontWeightSemibold },
  // As wide as a tablet held upright; in a wider pane lines would be too long to read.
  main: { padding: tokens.spacingHorizontalL, maxWidth: "736px", margin: "0 auto" },
  foot: {
    padding: `0 ${tokens.spacingHorizontalL} ${tokens.spacingVerticalM}`,
    color: tokens.colorNeutralForeground3,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
  },
});

interface Chosen {
  readonly view: View;
  readonly bath: string | undefined;
  readonly entry: EntryId | undefined;
  readonly lastEntry: LastEntry | undefined;
  /** A sheet of the shop's own is being taken over. */
  readonly adopting: boolean;
  /** The list behind More is shown after one of its views. */
  readonly cameBack: boolean;
}

interface LogProps {
  readonly log: LogSnapshot;
  readonly chosen: Chosen;
  readonly onChoose: (change: Partial<Chosen>) => void;
  /** Back to the list of views that have no tab. */
  readonly onMore: () => void;
  readonly refresh: LogStore["refresh"];
  /** The initials of whoever works on this device, which each new row gets. */
  readonly me: string | undefined;
  readonly onMe: (initials: string | undefined) => void;
}

/** The step that is shown; offered to a person who is new on this device; or none. */
type Tour = number | "offered" | undefined;

const initialsIn = (kept: unknown): string | undefined => (typeof kept === "string" && kept !== "" ? kept : undefined);

/** The log that is shown, or was before a problem. */
function logIn(state: LogStore["state"]): LogSnapshot | undefined {
  if (state.status === "ready") return state.read.log;
  return state.status === "problem" ? state.last?.log : undefined;
}

const systemOf = (log: LogSnapshot): UnitSystem => unitSystems.find((one) => one === log.fields.unitSystem) ?? "US";

/** The bath that a person chose, as long as the log has it, or else the usual one. */
const bathOf = (log: LogSnapshot, { bath }: Chosen): string | undefined =>
  bath !== undefined && bathIds(log).includes(bath) ? bath : usualBath(log);

function LogView({ log, chosen, onChoose, onMore, refresh, me, onMe }: LogProps): React.JSX.Element {
  const system = systemOf(log);
  const bath = bathOf(log, chosen);
  const now = presentOf(log, fieldTextNow(new Date()));
  const context: LogContext = { log, system, bath, now, me };
  if (chosen.view === "claims") return <LazyClaimsView context={context} refresh={refresh} />;
  if (chosen.view === "shop") return <LazyShopView context={context} refresh={refresh} onMore={onMore} />;
  const onLastEntry = (lastEntry: LastEntry | undefined): Promise<void> => {
    onChoose({ lastEntry, ...(lastEntry === undefined ? {} : { bath: lastEntry.bath }) });
    return refresh();
  };
  if (chosen.view === "now") {
    return (
      <NowView
        context={context}
        lastEntry={chosen.lastEntry}
        onLastEntry={onLastEntry}
        onMe={onMe}
        onBath={(id) => {
          onChoose({ bath: id });
        }}
        onRecord={(entry) => {
          onChoose({ view: "record", entry });
        }}
      />
    );
  }
  if (chosen.adopting)
    return (
      <LazyAdoptView
        log={log}
        system={system}
        onWritten={refresh}
        onClose={() => {
          onChoose({ adopting: false });
        }}
      />
    );
  return (
    <LazyRecordView
      log={log}
      system={system}
      bath={bath}
      open={chosen.entry}
      onOpen={(entry) => {
        onChoose({ entry });
      }}
      lastEntry={chosen.lastEntry}
      me={me}
      onLastEntry={onLastEntry}
      onAdopt={() => {
        onChoose({ adopting: true });
      }}
    />
  );
}

/** `notice` is said above the view. */
function LogViews({
  read,
  notice,
  ...props
}: Omit<LogProps, "log"> & { readonly read: ReadLog; readonly notice: React.ReactNode }): React.JSX.Element {
  const page = usePageStyles();
  return (
    <div className={page.page}>
      {notice}
      <FiguresContext value={read}>
        <LogView {...props} log={read.log} />
      </FiguresContext>
    </div>
  );
}

/** A cell that was typed over; from then on the place for what its repair did. */
function TypedOverNotice(props: React.ComponentProps<typeof LazyTypedOver>): React.JSX.Element | null {
  const [wasSeen, setWasSeen] = useState(false);
  const isSeen = props.cell !== undefined;
  if (isSeen && !wasSeen) setWasSeen(true);
  return isSeen || wasSeen ? <LazyTypedOver {...props} /> : null;
}

function Body({
  store,
  ...props
}: { readonly store: LogStore; readonly onTour: () => void } & Omit<LogProps, "log" | "refresh">): React.JSX.Element {
  const { state, refresh } = store;
  const { chosen, onChoose, onMore, onTour } = props;
  if (chosen.view === "more")
    return (
      <LazyMoreView
        returned={chosen.cameBack}
        onOpen={(view) => {
          onChoose({ view });
        }}
        onTour={onTour}
      />
    );
  if (chosen.view === "about") return <LazyAboutView onMore={onMore} />;
  if (chosen.view === "functions") return <LazyFunctionsView onMore={onMore} />;
  if (chosen.view === "try") {
    const log = state.status === "ready" ? state.read.log : undefined;
    return (
      <LazyTryView
        onMore={onMore}
        context={{
          log,
          system: log === undefined ? "US" : systemOf(log),
          bath: log === undefined ? undefined : bathOf(log, chosen),
        }}
      />
    );
  }
  switch (state.status) {
    case "reading":
      return <Spinner label="Reading the workbook…" />;
    case "no log":
      return (
        <LazyStartView
          onBuilt={refresh}
          onAdopt={() => {
            onChoose({ view: "record", adopting: true });
            return refresh();
          }}
        />
      );
    case "problem":
      // What is being typed outlasts a log that cannot be read for a moment.
      return (chosen.entry === undefined && !chosen.adopting) || state.last === undefined ? (
        <LazyProblemView problem={state.problem} onReadAgain={refresh} />
      ) : (
        <LogViews {...props} read={state.last} refresh={refresh} notice={<ProblemBar problem={state.problem} />} />
      );
    case "ready":
      return (
        <LogViews
          {...props}
          read={state.read}
          refresh={refresh}
          notice={
            state.unknownFunctions ? (
              <LazyUnknownFunctions onRepaired={refresh} />
            ) : (
              <TypedOverNotice cell={chosen.view === "shop" ? undefined : state.typedOver} onRepaired={refresh} />
            )
          }
        />
      );
  }
}

/** The whole pane: the views of the log in the open workbook. */
export function Pane(): React.JSX.Element {
  const styles = useStyles();
  const theme = usePaneTheme();
  const store = useLog();
  const [chosen, setChosen] = useState<Chosen>({
    view: "now",
    bath: undefined,
    entry: undefined,
    lastEntry: undefined,
    adopting: false,
    cameBack: false,
  });
  const choose = (change: Partial<Chosen>): void => {
    setChosen((before) => ({ ...before, ...change }));
  };
  const { state } = store;
  const { shop, jobNumber } = logIn(state)?.fields ?? {};
  const drafts = useMemo(
    () => draftsOn(onThisDevice(`drafts of ${String(shop)}, job ${String(jobNumber)}`)),
    [shop, jobNumber],
  );
  const [person] = useState(() => onThisDevice("person"));
  const [cautions] = useState(() =>
    cautionsOn(onThisDevice("cautions shown"), () => fieldTextNow(new Date()).slice(0, 10)),
  );
  const [me, setMe] = useState(() => initialsIn(person.read()));
  const [tourOffered] = useState(() => onThisDevice("tour"));
  const [tour, setTour] = useState<Tour>(() => (tourOffered.read() === undefined ? "offered" : undefined));
  return (
    <FluentProvider
      theme={theme}
      className={styles.provider}
      style={{ colorScheme: theme === darkTheme ? "dark" : "light" }}
    >
      <header className={styles.head}>
        <h1 className={styles.job}>
          <span>{shop ?? "Bathsheet"}</span>
          {jobNumber === undefined ? null : <span className={styles.number}>{jobNumber}</span>}
        </h1>
        <div className={styles.tabs}>
          <ViewTabs
            chosen={chosen.view}
            onChoose={(view) => {
              choose({ view, entry: undefined, adopting: false, cameBack: false });
            }}
          />
        </div>
      </header>
      <main className={styles.main}>
        {tour === undefined ? null : (
          <LazyTour
            step={tour === "offered" ? undefined : tour}
            onStep={setTour}
            onEnd={() => {
              tourOffered.write("seen");
              setTour(undefined);
            }}
            onView={(view) => {
              choose({ view, entry: undefined, adopting: false, cameBack: false });
            }}
          />
        )}
        <div id="view" role="tabpanel" aria-labelledby={tabId(chosen.view)}>
          <CautionsContext value={cautions}>
            <DraftsContext value={drafts}>
              <ViewBoundary
                of={chosen.view === "now" ? state : chosen.view}
                onFault={drafts.noteFault}
                instead={(fault, again) => (
                  <FaultView
                    fault={fault}
                    drafted={drafts.wasDrafted()}
                    onAgain={again}
                    onNow={
                      chosen.view === "now"
                        ? undefined
                        : () => {
                            choose({ view: "now", entry: undefined, adopting: false });
                          }
                    }
                  />
                )}
              >
                <HoldLooksContext value={store.holdLooks}>
                  <Body
                    store={store}
                    chosen={chosen}
                    onChoose={choose}
                    onMore={() => {
                      choose({ view: "more", cameBack: true });
                    }}
                    onTour={() => {
                      setTour(0);
                    }}
                    me={me}
                    onMe={(initials) => {
                      person.write(initials);
                      setMe(initials);
                    }}
                  />
                </HoldLooksContext>
              </ViewBoundary>
            </DraftsContext>
          </CautionsContext>
        </div>
      </main>
      <footer className={styles.foot}>{arithmeticAid}</footer>
    </FluentProvider>
  );
}
