import { makeStyles, tokens } from "@fluentui/react-components";
import { createElement } from "react";

import { type FormulaNode, formulaNodes } from "../../../functions/reference/formula-markup.ts";
import { referenceOf } from "../../../functions/reference-of.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";

/** Without one of these a browser lowers subscripts hardly at all. */
const mathFonts = `"Cambria Math", "STIX Two Math", "Latin Modern Math", "DejaVu Math TeX Gyre", math`;

const useStyles = makeStyles({
  lines: {
    overflowX: "auto",
    borderLeft: `4px solid ${tokens.colorNeutralStroke2}`,
    padding: "2px 10px",
    fontSize: tokens.fontSizeBase400,
    whiteSpace: "nowrap",
    lineHeight: "1.9",
    "& math": { fontFamily: mathFonts },
  },
  legend: {
    margin: 0,
    padding: 0,
    listStyleType: "none",
    display: "flex",
    flexWrap: "wrap",
    columnGap: tokens.spacingHorizontalL,
  },
});

function element(node: FormulaNode): React.ReactElement {
  return createElement(
    node.tag,
    {},
    ...("parts" in node ? node.parts.map(element) : [node.text.replaceAll(" ", "\u00a0")]),
  );
}

/** Mathematics that the browser sets and a screen reader speaks. */
function math(markup: string): React.ReactElement {
  return createElement("math", { displaystyle: "true" }, ...formulaNodes(markup).map(element));
}

/** A function's formula in symbols, what they stand for, and who says so. */
export function FunctionFormula({ id }: { readonly id: string }): React.JSX.Element {
  const styles = useStyles();
  const page = usePageStyles();
  const { symbols, where, source } = referenceOf(id);
  const meanings = Object.entries(where);
  return (
    <>
      {symbols.length === 0 ? null : (
        <div className={styles.lines} role="group" aria-label={`Formula of ${id}`} tabIndex={0}>
          {symbols.map((line) => (
            <div key={line}>{math(line)}</div>
          ))}
        </div>
      )}
      {meanings.length === 0 ? null : (
        <ul className={styles.legend}>
          {meanings.map(([symbol, meaning]) => (
            <li key={symbol}>
              {math(symbol)} {meaning}
            </li>
          ))}
        </ul>
      )}
      <p className={page.quiet}>{`Source: ${source}`}</p>
    </>
  );
}
