import { makeStyles, tokens } from "@fluentui/react-components";

import type { UnitSystem } from "../../../core/units/unit-system.ts";
import { columnLetters } from "../../../joblog/layout/addresses.ts";
import type { InputColumn } from "../../../joblog/model/definition.ts";
import { headerOf } from "../../../joblog/model/headers.ts";
import type { LogSnapshot } from "../../../joblog/model/log-snapshot.ts";
import { usePageStyles } from "../../controls/use-page-styles.ts";
import type { AdoptAnswers, ColumnMap } from "../adopt-answers.ts";
import { columnsOf, kindOf } from "../adopt-kinds.ts";
import { choicesOf } from "../choices-of.ts";
import { pickedPlace } from "../picked-answers.ts";
import type { SheetTable } from "../sheet-table.ts";
import { type ExtraColumn, extraColumns } from "../sheet-views.ts";
import { asOptions, Pick, TextAnswer } from "./adopt-fields.tsx";

const useStyles = makeStyles({
  fold: {
    "& > summary": {
      cursor: "pointer",
      padding: `${tokens.spacingVerticalM} 0`,
      fontWeight: tokens.fontWeightSemibold,
      color: tokens.colorBrandForegroundLink,
    },
  },
});

export interface AdoptStepProps {
  readonly sheet: SheetTable;
  readonly answers: AdoptAnswers;
  readonly log: LogSnapshot;
  readonly system: UnitSystem;
  readonly onAnswer: (change: Partial<AdoptAnswers>) => void;
}

/** Which column of the sheet fills which of the log. */
export function AdoptColumnsStep({
  sheet,
  firstColumn,
  answers,
  log,
  system,
  onAnswer,
}: AdoptStepProps & { readonly firstColumn: number }): React.JSX.Element {
  const page = usePageStyles();
  const styles = useStyles();
  const columns = columnsOf(kindOf(answers.table));
  const width = Math.max(sheet.headings.length, ...sheet.rows.map(({ cells }) => cells.length));
  const options = Array.from({ length: width }, (_, at) => ({
    value: String(at),
    words: `${columnLetters(at + firstColumn)}: ${sheet.headings[at] ?? ""}`,
  }));
  const pickColumn = (id: string, label: string, needed: boolean): React.JSX.Element => (
    <Pick
      key={id}
      label={label}
      required={needed}
      value={String(answers.columns[id] ?? "")}
      none="Not in the sheet"
      options={options}
      onPick={(value) => {
        const rest = Object.fromEntries(Object.entries(answers.columns).filter(([one]) => one !== id));
        const at = pickedPlace(value);
        const map: ColumnMap = at === undefined ? rest : { ...rest, [id]: at };
        onAnswer({ columns: map });
      }}
    />
  );
  const same = (column: InputColumn): React.JSX.Element => {
    const label = `${column.label}, the same for all rows`;
    const change = (value: string): void => {
      onAnswer({ same: { ...answers.same, [column.id]: value } });
    };
    const value = answers.same[column.id] ?? "";
    return column.choices?.kind === "fixed" ? (
      <Pick
        key={`same ${column.id}`}
        label={label}
        value={value}
        none=""
        options={asOptions(choicesOf(column, log) ?? [])}
        onPick={change}
      />
    ) : (
      <TextAnswer key={`same ${column.id}`} label={label} value={value} hint={column.help} onType={change} />
    );
  };
  const field = (column: (typeof columns)[number]): React.JSX.Element => (
    <div key={column.id} className={page.page}>
      {pickColumn(column.id, headerOf(column, system), column.needed)}
      {column.type === "date and time" && column.id !== "closed"
        ? pickColumn("time", "Time, where it has a column of its own", false)
        : null}
      {column.needed &&
      answers.columns[column.id] === undefined &&
      column.type !== "date and time" &&
      !(column.id === "kind" && answers.columns["amount2"] !== undefined)
        ? same(column)
        : null}
    </div>
  );
  const isFirst = (column: (typeof columns)[number]): boolean =>
    column.needed || answers.columns[column.id] !== undefined;
  const extras = extraColumns(answers.table);
  const isMapped = ({ id }: ExtraColumn): boolean => answers.columns[id] !== undefined;
  const extraField = ({ id, label }: ExtraColumn): React.JSX.Element => pickColumn(id, label, false);
  return (
    <>
      <p className={page.quiet}>Proposed from your headings. Check each.</p>
      {columns.filter(isFirst).map(field)}
      {extras.filter(isMapped).map(extraField)}
      <details className={styles.fold}>
        <summary>More columns</summary>
        <div className={page.page}>
          {columns.filter((column) => !isFirst(column)).map(field)}
          {extras.filter((extra) => !isMapped(extra)).map(extraField)}
        </div>
      </details>
    </>
  );
}
