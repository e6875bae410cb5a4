import { Button, makeStyles, tokens } from "@fluentui/react-components";
import { AddRegular } from "@fluentui/react-icons/svg/add";
import { useState } from "react";

import { type RowFacts, rowFacts } from "../../advice/bath-facts.ts";
import { type ExpiredLot, expiredLots } from "../../advice/expired-lots.ts";
import type { LogContext } from "../../advice/log-context.ts";
import { amount, figure } from "../../advice/wording/figures.ts";
import { dayWords, serialOf } from "../../advice/wording/moments.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { SnapshotRow } from "../../joblog/model/log-snapshot.ts";
import { volume as volumeUnit } from "../../joblog/model/units-of.ts";
import { stockLevel } from "../../joblog/model/words.ts";
import { FurtherTitle } from "../controls/further-title.tsx";
import { AllCautions, ShortCautions } from "../controls/step-cautions.tsx";
import { usePageStyles } from "../controls/use-page-styles.ts";
import { WorkedOut } from "../controls/worked-out.tsx";
import { EntryFormView } from "../record/entry-form-view.tsx";
import { stockMoveEntry } from "../record/forms/stock-move/stock-move-entry.ts";
import type { LastEntry } from "../record/take-back.ts";
import { TakeBackButton } from "../record/take-back-button.tsx";
import { SettleCard } from "../settle/settle-card.tsx";
import { TypedOverFormulas } from "../start/repair-view.tsx";
import { limitsForm } from "./limits-form.ts";
import { rowForm } from "./row-form.ts";
import { ShopFileCard } from "./shop-file-card.tsx";
import { ShopFormView } from "./shop-form-view.tsx";
import { keysOf, shopRow, type ShopTable, shopTables, tableWords } from "./shop-tables.ts";

const useStyles = makeStyles({
  fold: {
    border: `1px solid ${tokens.colorNeutralStroke2}`,
    borderRadius: tokens.borderRadiusLarge,
    "& > summary": {
      cursor: "pointer",
      padding: tokens.spacingHorizontalM,
      fontWeight: tokens.fontWeightSemibold,
      fontSize: tokens.fontSizeBase400,
    },
  },
  body: {
    display: "grid",
    rowGap: tokens.spacingVerticalS,
    padding: `0 ${tokens.spacingHorizontalM} ${tokens.spacingHorizontalM}`,
  },
  row: {
    width: "100%",
    maxWidth: "none",
    minHeight: "48px",
    justifyContent: "flex-start",
    textAlign: "left",
    fontWeight: tokens.fontWeightRegular,
  },
  name: { display: "block", fontWeight: tokens.fontWeightSemibold, overflowWrap: "anywhere" },
  more: {
    display: "block",
    color: tokens.colorNeutralForeground3,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
  },
});

interface Props {
  readonly context: LogContext;
  readonly refresh: () => Promise<void>;
  readonly onMore: () => void;
}

type Open =
  | { readonly form: "limits" }
  | { readonly form: "stock" }
  | { readonly form: "row"; readonly table: ShopTable; readonly key: string | undefined };

type About = { readonly [Table in ShopTable]: (row: RowFacts<Table>, system: UnitSystem) => string | undefined };

/** What tells a row from its neighbors. */
const about: About = {
  tanks: ({ number }, system) => {
    const volume = number("workingVolume");
    return volume === undefined ? "not measured yet" : `working volume ${amount(volume)} ${volumeUnit[system]}`;
  },
  waters: ({ text }) => [text("name"), text("hardnessClass")].filter((one) => one !== undefined).join(", "),
  concentrates: ({ text }) => text("description"),
  people: ({ text }) => text("name"),
  claims: ({ text }) => text("loss"),
  keepOutWords: ({ text }) =>
    `${text("kind") ?? "hazard"}, ${text("counts") === "beginning" ? "longer words too" : "whole word"}`,
  stockBalance: ({ number }, system) => {
    const [days, reorder] = [number("leadDays"), number("reorderAt")];
    if (days === undefined) return "delivery time not given yet";
    return `delivery takes ${figure(days, 0)} days${reorder === undefined ? "" : `, reorder at ${amount(reorder)} ${volumeUnit[system]}`}`;
  },
};

function wordsOf<Table extends ShopTable>(table: Table, row: SnapshotRow<Table>, system: UnitSystem): string {
  return about[table](rowFacts(row), system) ?? "";
}

function aboutRow({ log, system }: LogContext, table: ShopTable, key: string): string {
  const row = shopRow(log, table, key);
  return row === undefined ? "" : wordsOf(table, row, system);
}

function expirySentence({ lot, expiry }: ExpiredLot): string {
  return ` ${lot === undefined ? "A lot without a number" : `Lot ${lot}`} expired on ${dayWords(expiry)}, and some of it may be left: look at the packs.`;
}

export function stockSentences({ log, system, now }: Pick<LogContext, "log" | "system" | "now">): readonly string[] {
  return log.rows.stockBalance.map(rowFacts).map((row) => {
    const [name, book, left] = [row.text("concentrate") ?? "", row.number("book"), row.number("daysLeft")];
    const words =
      book === undefined
        ? "not counted yet"
        : `${amount(book)} ${volumeUnit[system]} by the book${left === undefined ? "" : `, ${figure(left, 1)} days of use`}${row.text("reorder") === stockLevel.reorder ? ": reorder" : ""}`;
    const expired = expiredLots(log, name, book, serialOf(now) ?? 0).map(expirySentence);
    return `${name}: ${words}.${expired.join("")}`;
  });
}

function Stock({
  context,
  onOpen,
}: {
  readonly context: LogContext;
  readonly onOpen: (open: Open) => void;
}): React.JSX.Element {
  const page = usePageStyles();
  const Icon = stockMoveEntry.icon;
  return (
    <>
      <WorkedOut of={() => stockSentences(context)}>
        {(sentences) =>
          sentences.map((sentence) => (
            <p key={sentence} className={page.quiet}>
              {sentence}
            </p>
          ))
        }
      </WorkedOut>
      <Button
        size="large"
        icon={<Icon />}
        className={page.big}
        onClick={() => {
          onOpen({ form: "stock" });
        }}
      >
        Record a count or receipt
      </Button>
    </>
  );
}

interface PageProps extends Props {
  readonly said: string;
  readonly recorded: LastEntry | undefined;
  readonly onOpen: (open: Open) => void;
  readonly onTakenBack: (entry: LastEntry) => Promise<void>;
}

function ShopPage({ context, refresh, onMore, said, recorded, onOpen, onTakenBack }: PageProps): React.JSX.Element {
  const page = usePageStyles();
  const styles = useStyles();
  const { log, system } = context;
  return (
    <section className={page.page} aria-label="Shop">
      <FurtherTitle
        title="The shop’s own figures"
        about={`Units: ${system}, set when the log was built.`}
        onMore={onMore}
      />
      <p role="status" className={page.quiet} hidden={said === ""}>
        {said}
      </p>
      {recorded === undefined ? null : <TakeBackButton entry={recorded} onTakenBack={onTakenBack} />}
      <Button
        size="large"
        className={page.big}
        onClick={() => {
          onOpen({ form: "limits" });
        }}
      >
        Limits
      </Button>
      {shopTables.map((table) => {
        const keys = keysOf(log, table);
        return (
          <details key={table} className={styles.fold}>
            <summary>{`${tableWords[table].all} (${String(keys.length)})`}</summary>
            <div className={styles.body}>
              {keys.map((key) => (
                <Button
                  key={key}
                  className={styles.row}
                  aria-label={`Change ${tableWords[table].one} ${key}`}
                  onClick={() => {
                    onOpen({ form: "row", table, key });
                  }}
                >
                  <span>
                    <span className={styles.name}>{key}</span>
                    <span className={styles.more}>{aboutRow(context, table, key)}</span>
                  </span>
                </Button>
              ))}
              <Button
                size="large"
                icon={<AddRegular />}
                className={page.big}
                onClick={() => {
                  onOpen({ form: "row", table, key: undefined });
                }}
              >{`Add a ${tableWords[table].one}`}</Button>
            </div>
          </details>
        );
      })}
      <details className={styles.fold}>
        <summary>Stock</summary>
        <div className={styles.body}>
          <Stock context={context} onOpen={onOpen} />
        </div>
      </details>
      <details className={styles.fold}>
        <summary>As a file</summary>
        <div className={styles.body}>
          <ShopFileCard log={log} system={system} refresh={refresh} />
        </div>
      </details>
      <details className={styles.fold}>
        <summary>Closed baths</summary>
        <div className={styles.body}>
          <SettleCard context={context} refresh={refresh} />
        </div>
      </details>
      <details className={styles.fold}>
        <summary>Formulas</summary>
        <div className={styles.body}>
          <TypedOverFormulas onRepaired={refresh} />
        </div>
      </details>
      <ShortCautions of="shop" />
      <AllCautions of="shop" />
    </section>
  );
}

/** Limits, lists and stock of the shop. */
export function ShopView({ context, refresh, onMore }: Props): React.JSX.Element {
  const [open, setOpen] = useState<Open>();
  const [said, setSaid] = useState("");
  const [recorded, setRecorded] = useState<LastEntry>();
  const [taken, setTaken] = useState<LastEntry>();
  const { log, system } = context;
  const close = (sentence: string, entry?: LastEntry): void => {
    setSaid(sentence);
    setRecorded(entry);
    setTaken(undefined);
    setOpen(undefined);
  };
  const saved = async (sentence: string, entry?: LastEntry): Promise<void> => {
    await refresh();
    close(sentence, entry);
  };
  const takenBack = async (entry: LastEntry): Promise<void> => {
    await refresh();
    setRecorded(undefined);
    setTaken(entry);
    setOpen({ form: "stock" });
  };
  if (open === undefined)
    return (
      <ShopPage
        context={context}
        refresh={refresh}
        onMore={onMore}
        said={said}
        recorded={recorded}
        onOpen={setOpen}
        onTakenBack={takenBack}
      />
    );
  if (open.form === "stock") {
    return (
      <EntryFormView
        form={stockMoveEntry}
        context={context}
        reopened={taken?.values}
        back="Shop"
        onBack={() => {
          close("");
        }}
        onOpen={() => {
          close("");
        }}
        onRecorded={(entry) => {
          void saved(`Recorded: ${entry.what}.`, entry);
        }}
      />
    );
  }
  const form = open.form === "limits" ? limitsForm(log, system) : rowForm(log, system, open.table, open.key);
  return (
    <ShopFormView
      form={form}
      system={system}
      onBack={() => {
        close("");
      }}
      onSaved={(what) => saved(`Saved: ${what}.`)}
    />
  );
}
