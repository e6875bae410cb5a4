import { Button, makeStyles, mergeClasses, tokens } from "@fluentui/react-components";

import type { CellMatrix, CellValue, WorksheetFunction } from "../../../functions/define-function.ts";
import { referenceOf } from "../../../functions/reference-of.ts";
import { figure } from "../../advice/wording/figures.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import { FunctionFormula } from "./function-formula.tsx";
import { callOf } from "./function-search.ts";
import { putInSheet } from "./put-in-sheet.ts";

const useStyles = makeStyles({
  card: { borderBottom: `1px solid ${tokens.colorNeutralStroke2}` },
  summary: { cursor: "pointer", padding: `${tokens.spacingVerticalM} 0`, listStylePosition: "inside" },
  name: { fontWeight: tokens.fontWeightSemibold, color: tokens.colorBrandForegroundLink, overflowWrap: "anywhere" },
  line: { display: "block", color: tokens.colorNeutralForeground2 },
  body: { display: "grid", rowGap: tokens.spacingVerticalM, paddingBottom: tokens.spacingVerticalL },
  code: {
    fontFamily: tokens.fontFamilyMonospace,
    fontSize: tokens.fontSizeBase200,
    backgroundColor: tokens.colorNeutralBackground3,
    padding: "6px 8px",
    borderRadius: tokens.borderRadiusMedium,
    overflowWrap: "anywhere",
    display: "block",
  },
  list: { margin: 0, padding: 0, listStyleType: "none", display: "grid", rowGap: tokens.spacingVerticalXS },
  argument: { fontWeight: tokens.fontWeightSemibold },
  heading: { margin: 0, fontSize: tokens.fontSizeBase300, fontWeight: tokens.fontWeightSemibold },
});

function shown(result: CellValue | CellMatrix): string {
  if (Array.isArray(result)) return result.map((row) => row.map(shown).join("  ")).join(" / ");
  return typeof result === "number" ? figure(result, 5) : String(result);
}

interface Props {
  readonly fn: WorksheetFunction;
  readonly onPut: (formula: string) => void;
}

/** One function: what it takes, gives, rests on and does not know. */
export function FunctionCard({ fn, onPut }: Props): React.JSX.Element {
  const styles = useStyles();
  const page = usePageStyles();
  const [example] = fn.examples;
  const cautions = referenceOf(fn.id).cautions;
  const Icon = putInSheet.icon;
  return (
    <details className={styles.card}>
      <summary className={styles.summary}>
        <span className={styles.name}>{`BATH.${fn.id}`}</span>
        <span className={styles.line}>{fn.summary}</span>
      </summary>
      <div className={styles.body}>
        <code className={styles.code}>{callOf(fn)}</code>
        <ul className={styles.list} aria-label={`Arguments of ${fn.id}`}>
          {fn.arguments.map(({ name, help, unit, optional }) => (
            <li key={name}>
              <span className={styles.argument}>{name}</span>
              {`${optional ? " (optional)" : ""}: ${help}${unit === undefined ? "" : ` (${unit})`}`}
            </li>
          ))}
        </ul>
        <p className={page.quiet}>{`Gives ${fn.result.help}.`.replace(/\.\.$/, ".")}</p>
        {cautions.length === 0 ? null : (
          <ul className={mergeClasses(styles.list, page.caution)} aria-label={`Cautions of ${fn.id}`}>
            {cautions.map(({ text }) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        )}
        {example === undefined ? null : (
          <>
            <code className={styles.code}>{`${example.formula} gives ${shown(example.result)}`}</code>
            <Button
              size="large"
              icon={<Icon />}
              className={page.big}
              aria-label={`${putInSheet.name}: ${fn.id}`}
              onClick={() => {
                onPut(example.formula);
              }}
            >
              {putInSheet.name}
            </Button>
          </>
        )}
        <h4 className={styles.heading}>Formula</h4>
        <p className={page.quiet}>{fn.source}</p>
        <FunctionFormula id={fn.id} />
        {fn.notes.length === 0 ? null : (
          <>
            <h4 className={styles.heading}>Limits</h4>
            <ul className={styles.list}>
              {fn.notes.map((note) => (
                <li key={note}>{note}</li>
              ))}
            </ul>
          </>
        )}
      </div>
    </details>
  );
}
