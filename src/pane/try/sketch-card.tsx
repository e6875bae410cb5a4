import { Button, Field, makeStyles, mergeClasses, Select, tokens } from "@fluentui/react-components";
import { Input } from "@fluentui/react-input";
import { useState } from "react";

import { type LogProblem, problemFrom } from "../../excel/office-problems.ts";
import { FindingsList } from "../controls/findings-list.tsx";
import { ProblemBar } from "../controls/problem-bar.tsx";
import { AllCautions, ShortCautions } from "../controls/step-cautions.tsx";
import { useControlStyles } from "../controls/use-control-styles.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import { putInSheet } from "../functions/put-in-sheet.ts";
import type { Draft } from "../record/entry-form.ts";
import type { Sketch, SketchContext, SketchField, SketchTable } from "./sketch.ts";

const useStyles = makeStyles({
  card: { border: `1px solid ${tokens.colorNeutralStroke2}`, borderRadius: tokens.borderRadiusLarge },
  summary: { cursor: "pointer", padding: tokens.spacingHorizontalM, minHeight: "24px" },
  title: { fontWeight: tokens.fontWeightSemibold, fontSize: tokens.fontSizeBase400 },
  purpose: {
    display: "block",
    color: tokens.colorNeutralForeground3,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
  },
  body: {
    display: "grid",
    rowGap: tokens.spacingVerticalM,
    padding: `0 ${tokens.spacingHorizontalM} ${tokens.spacingHorizontalM}`,
  },
  fields: {
    display: "grid",
    gridTemplateColumns: "repeat(auto-fill, minmax(120px, 1fr))",
    columnGap: tokens.spacingHorizontalM,
    marginBottom: `calc(-1 * ${tokens.spacingVerticalM})`,
  },
  table: {
    width: "100%",
    borderCollapse: "collapse",
    fontVariantNumeric: "tabular-nums",
    fontSize: tokens.fontSizeBase200,
    "& th, & td": {
      textAlign: "left",
      verticalAlign: "top",
      padding: "6px 8px 6px 0",
      borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
    },
  },
  formula: {
    display: "block",
    fontFamily: tokens.fontFamilyMonospace,
    fontSize: tokens.fontSizeBase200,
    backgroundColor: tokens.colorNeutralBackground3,
    padding: "6px 8px",
    borderRadius: tokens.borderRadiusMedium,
    overflowWrap: "anywhere",
  },
});

/** Characters that a list of half the card's width still shows beside its arrow. */
const longestHalf = 5;

interface FieldProps {
  readonly field: SketchField;
  readonly value: string;
  readonly onChange: (value: string) => void;
}

function SketchFieldView({ field, value, onChange }: FieldProps): React.JSX.Element {
  const { control, cell, wideCell } = useControlStyles();
  const wide = field.choices?.some((choice) => choice.length > longestHalf) === true;
  return (
    <Field
      className={mergeClasses(cell, wide && wideCell)}
      label={field.label}
      {...(field.hint === undefined ? {} : { hint: field.hint })}
    >
      {field.choices === undefined ? (
        <Input
          className={control}
          size="large"
          autoComplete="off"
          value={value}
          onChange={(_, data) => {
            onChange(data.value);
          }}
        />
      ) : (
        <Select
          className={control}
          size="large"
          value={value}
          onChange={(_, data) => {
            onChange(data.value);
          }}
        >
          {["", ...field.choices].map((choice) => (
            <option key={choice} value={choice}>
              {choice}
            </option>
          ))}
        </Select>
      )}
    </Field>
  );
}

function AnswerTable({ table, label }: { readonly table: SketchTable; readonly label: string }): React.JSX.Element {
  const styles = useStyles();
  return (
    <table className={styles.table} aria-label={label}>
      <thead>
        <tr>
          {table.headers.map((header) => (
            <th key={header} scope="col">
              {header}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {table.rows.map((row, index) => (
          <tr key={index}>
            {row.map((cell, column) => (
              <td key={column}>{cell}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** One question: fields, what they come to, and the formula for a cell. */
export function SketchCard({
  sketch,
  context,
}: {
  readonly sketch: Sketch;
  readonly context: SketchContext;
}): React.JSX.Element {
  const styles = useStyles();
  const page = usePageStyles();
  const [typed, setTyped] = useState<Draft>({});
  const [said, setSaid] = useState("");
  const [failure, setFailure] = useState<LogProblem>();
  const values: Draft = { ...sketch.proposals(context), ...typed };
  const { findings, table, formula } = sketch.work(values, context);
  const Icon = putInSheet.icon;

  const put = async (text: string): Promise<void> => {
    setSaid("");
    setFailure(undefined);
    try {
      setSaid(`The formula is in ${await putInSheet.run(text)}.`);
    } catch (error) {
      setFailure(problemFrom(error));
    }
  };

  return (
    <details className={styles.card}>
      <summary className={styles.summary}>
        <span className={styles.title}>{sketch.title}</span>
        <span className={styles.purpose}>{sketch.purpose}</span>
      </summary>
      <div className={styles.body}>
        {sketch.step === undefined ? null : (
          <>
            <ShortCautions of={sketch.step} />
            <AllCautions of={sketch.step} />
          </>
        )}
        <div className={styles.fields}>
          {sketch.fields(context).map((field) => (
            <SketchFieldView
              key={field.key}
              field={field}
              value={values[field.key] ?? ""}
              onChange={(value) => {
                setTyped((before) => ({ ...before, [field.key]: value }));
              }}
            />
          ))}
        </div>
        <FindingsList findings={findings} />
        {table === undefined ? null : <AnswerTable table={table} label={sketch.title} />}
        {formula === undefined ? null : (
          <>
            <code className={styles.formula}>{formula}</code>
            <Button
              size="large"
              icon={<Icon />}
              className={page.big}
              aria-label={`${putInSheet.name}: ${sketch.title}`}
              onClick={() => {
                void put(formula);
              }}
            >
              {putInSheet.name}
            </Button>
          </>
        )}
        <p role="status" className={page.quiet} hidden={said === ""}>
          {said}
        </p>
        {failure === undefined ? null : <ProblemBar problem={failure} />}
      </div>
    </details>
  );
}
