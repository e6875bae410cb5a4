import { Button } from "@fluentui/react-components";
import { ArrowLeftRegular } from "@fluentui/react-icons/svg/arrow-left";
import { useMemo, useState } from "react";

import { presentOf } from "../../advice/log-clock.ts";
import { countOf } from "../../advice/wording/figure-words.ts";
import { fieldTextNow, serialOf } from "../../advice/wording/moments.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import { type LogProblem, problemFrom } from "../../excel/office-problems.ts";
import { readActiveSheet, type SheetReading } from "../../excel/read/read-active-sheet.ts";
import { joinReceipts, type Receipt } from "../../excel/record/receipt.ts";
import type { ColumnId } from "../../joblog/formula/log-names.ts";
import type { TableId } from "../../joblog/formula/log-types.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { LongWorkView } from "../controls/long-work-view.tsx";
import { ProblemBar } from "../controls/problem-bar.tsx";
import { useFocusOnShow } from "../controls/use-focus-on-show.ts";
import { useLongWork } from "../controls/use-long-work.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import { TakeBackButton } from "../record/take-back-button.tsx";
import type { AdoptAnswers } from "./adopt-answers.ts";
import { type AdoptTable, kindOf } from "./adopt-kinds.ts";
import { type Adoption, judgeSheet, settleRows } from "./adopt-rows.ts";
import { adoptSheet } from "./adopt-sheet.ts";
import type { DoubtAnswers } from "./doubt-kinds.ts";
import { proposeColumns } from "./propose-columns.ts";
import { isAnswered, questionsOn } from "./questions.ts";
import { proposeHeadingRow, tableBelow } from "./sheet-table.ts";
import { AdoptCheckStep } from "./steps/adopt-check-step.tsx";
import { AdoptColumnsStep } from "./steps/adopt-columns-step.tsx";
import { AdoptQuestionsStep } from "./steps/adopt-questions-step.tsx";
import { AdoptSheetStep } from "./steps/adopt-sheet-step.tsx";
import { strengthOf } from "./strength-cell.ts";

const steps = ["Your sheet", "Columns", "Open questions", "Check"] as const;

function blankAnswers(log: LogSnapshot): AdoptAnswers {
  const only = <Table extends TableId>(table: Table, column: ColumnId<Table>): string => {
    const [first, ...others] = log.rows[table].map(({ cells }) => String(cells[column] ?? ""));
    return others.length === 0 ? (first ?? "") : "";
  };
  const newBath = {
    tank: only("tanks", "tank"),
    water: only("waters", "water"),
    concentrate: only("concentrates", "concentrate"),
    strength: "",
  };
  return {
    table: "readings",
    columns: {},
    units: {},
    same: { purpose: "check" },
    order: undefined,
    dotTime: undefined,
    usualTime: "",
    usualTime2: "",
    asAbove: {},
    unitWords: {},
    names: {},
    newBath,
  };
}

function StepHeading({ words }: { readonly words: string }): React.JSX.Element {
  const page = usePageStyles();
  const heading = useFocusOnShow<HTMLHeadingElement>(true);
  return (
    <h2 ref={heading} tabIndex={-1} className={page.title}>
      {words}
    </h2>
  );
}

/** How many of the sheet's rows are in the log, and everything that was written for them. */
interface Written {
  readonly rows: number;
  readonly receipt: Receipt;
}

const nothing: Written = { rows: 0, receipt: joinReceipts([]) };

const rowsInLog = (count: number): string =>
  count === 1 ? "1 row is in the log" : `${String(count)} rows are in the log`;

interface Props {
  readonly log: LogSnapshot;
  readonly system: UnitSystem;
  readonly onWritten: () => Promise<void>;
  readonly onClose: () => void;
}

/** Takes rows over from a sheet that the shop kept by hand: four steps, and nothing written before the last. */
export function AdoptView({ log, system, onWritten, onClose }: Props): React.JSX.Element {
  const page = usePageStyles();
  const work = useLongWork();
  const [step, setStep] = useState(0);
  const [sheet, setSheet] = useState<SheetReading>();
  const [headingRow, setHeadingRow] = useState(0);
  const [answers, setAnswers] = useState(() => blankAnswers(log));
  const [doubts, setDoubts] = useState<DoubtAnswers>({});
  const [failure, setFailure] = useState<LogProblem>();
  /** Fixed once writing has begun, less what is in the log by then. */
  const [left, setLeft] = useState<Adoption>();
  const [written, setWritten] = useState<Written>(nothing);

  const change = (some: Partial<AdoptAnswers>): void => {
    setAnswers((before) => ({ ...before, ...some }));
  };
  const propose = (reading: SheetReading, row: number, table: AdoptTable): void => {
    setHeadingRow(row);
    const { headings } = tableBelow(reading, row);
    setDoubts({});
    change({
      table,
      columns: proposeColumns(headings, kindOf(table)),
      units: {},
      unitWords: {},
      asAbove: {},
      names: {},
      order: undefined,
      dotTime: undefined,
      same: table === "readings" ? { purpose: "check" } : {},
    });
  };
  const read = async (): Promise<void> => {
    setFailure(undefined);
    try {
      const reading = await readActiveSheet();
      setSheet(reading);
      propose(reading, proposeHeadingRow(reading.values), answers.table);
    } catch (error) {
      setFailure(problemFrom(error));
    }
  };
  const table = useMemo(() => (sheet === undefined ? undefined : tableBelow(sheet, headingRow)), [sheet, headingRow]);
  const judged = useMemo(
    () =>
      table === undefined || step < 3
        ? undefined
        : judgeSheet(table, answers, log, system, serialOf(presentOf(log, fieldTextNow(new Date()))) ?? 0),
    [table, answers, log, system, step],
  );
  const adoption = left ?? (judged === undefined ? undefined : settleRows(judged, answers, doubts, log));
  const open = table === undefined ? undefined : questionsOn(table, answers, log, system);
  const opensBath = adoption?.before.some(({ table: to }) => to === "baths") === true;
  const { newBath } = answers;
  const strength = strengthOf(newBath.strength, system);
  const bathUnknown = !opensBath
    ? undefined
    : [newBath.tank, newBath.water, newBath.concentrate, newBath.strength].some((text) => text.trim() === "")
      ? "A new bath needs its tank, water, concentrate and strength: go back to the open questions."
      : "why" in strength
        ? `The strength of the new bath: ${strength.why}`
        : undefined;
  const ready =
    [
      sheet !== undefined,
      open?.unfilled.length === 0,
      open !== undefined && isAnswered(open, answers),
      adoption !== undefined && adoption.taken.length > 0 && bathUnknown === undefined,
    ][step] === true;

  const write = async (all: Adoption): Promise<void> => {
    const { taken } = all;
    await work.start("Writing the rows", async (long) => {
      await adoptSheet.run(
        {
          table: answers.table,
          adoption: all,
          onWritten: (rows, receipt) => {
            setWritten((earlier) => ({ rows: written.rows + rows, receipt: joinReceipts([earlier.receipt, receipt]) }));
            setLeft({ ...all, before: [], taken: taken.slice(rows) });
          },
        },
        long,
      );
    });
    await onWritten();
  };

  const takenBack = async (): Promise<void> => {
    setLeft(undefined);
    setWritten(nothing);
    await onWritten();
  };

  if (work.doing !== undefined) return <LongWorkView {...work} doing={work.doing} />;
  const done = left?.taken.length === 0;
  return (
    <section className={page.page} aria-label={adoptSheet.name}>
      <Button
        appearance="subtle"
        icon={<ArrowLeftRegular />}
        className={page.back}
        onClick={() => {
          if (step === 0 || written.rows > 0) onClose();
          else setStep(step - 1);
        }}
      >
        {step === 0 || written.rows > 0 ? "All entries" : (steps[step - 1] ?? "")}
      </Button>
      <StepHeading
        key={step}
        words={done ? rowsInLog(written.rows) : `${String(step + 1)} of ${String(steps.length)}: ${steps[step] ?? ""}`}
      />
      {step === 0 ? (
        <AdoptSheetStep
          sheet={sheet}
          headingRow={headingRow}
          table={answers.table}
          onRead={() => void read()}
          onHeadingRow={(row) => {
            if (sheet !== undefined) propose(sheet, row, answers.table);
          }}
          onTable={(kind) => {
            if (sheet !== undefined) propose(sheet, headingRow, kind);
          }}
        />
      ) : null}
      {step === 1 && table !== undefined ? (
        <AdoptColumnsStep
          sheet={table}
          firstColumn={sheet?.firstColumn ?? 0}
          answers={answers}
          log={log}
          system={system}
          onAnswer={change}
        />
      ) : null}
      {step === 2 && table !== undefined ? (
        <AdoptQuestionsStep sheet={table} answers={answers} log={log} system={system} onAnswer={change} />
      ) : null}
      {step === 3 && adoption !== undefined && !done ? (
        <AdoptCheckStep
          adoption={adoption}
          table={answers.table}
          system={system}
          doubts={doubts}
          {...(left === undefined ? { onDoubts: setDoubts } : {})}
        />
      ) : null}
      {bathUnknown === undefined ? null : (
        <p role="alert" className={page.caution}>
          {bathUnknown}
        </p>
      )}
      {[failure, work.problem].map((problem) =>
        problem === undefined ? null : <ProblemBar key={problem.what} problem={problem} />,
      )}
      {step === 1 && open !== undefined && open.unfilled.length > 0 ? (
        <p className={page.quiet}>{`Still needed: ${open.unfilled.map(({ label }) => label).join(", ")}.`}</p>
      ) : null}
      {written.rows > 0 ? (
        <TakeBackButton entry={{ what: rowsInLog(written.rows), receipt: written.receipt }} onTakenBack={takenBack} />
      ) : null}
      {done ? (
        <Button appearance="primary" size="large" className={page.big} onClick={onClose}>
          Go to the log
        </Button>
      ) : (
        <Button
          appearance="primary"
          size="large"
          className={page.big}
          disabled={!ready}
          onClick={() => {
            if (step < 3) setStep(step + 1);
            else if (adoption !== undefined) void write(adoption);
          }}
        >
          {step < 3 ? "Next" : `Write ${countOf(adoption?.taken.length ?? 0, "row")}`}
        </Button>
      )}
    </section>
  );
}
