import { makeStyles, tokens } from "@fluentui/react-components";

import { figure, money, percent } from "../../advice/wording/figures.ts";
import { FindingsList } from "../controls/findings-list.tsx";
import { usePageStyles } from "../controls/use-page-styles.ts";
import type { ShareResult } from "./share-result.ts";

const useStyles = makeStyles({
  table: {
    width: "100%",
    borderCollapse: "collapse",
    fontVariantNumeric: "tabular-nums",
    "& th, & td": {
      padding: "6px 0 6px 8px",
      borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
      textAlign: "right",
      fontWeight: tokens.fontWeightRegular,
    },
    "& th:first-child, & td:first-child": { paddingLeft: 0, textAlign: "left", overflowWrap: "anywhere" },
    "& thead th": { color: tokens.colorNeutralForeground3, fontSize: tokens.fontSizeBase200 },
    "& tfoot th, & tfoot td": { borderBottom: "none" },
    "& tfoot tr:first-child > *": { fontWeight: tokens.fontWeightSemibold },
  },
});

const orUnknown = (value: number | undefined): string => (value === undefined ? "not known" : money(value));

/** Each claim's share to the cent, and what is left: nothing. */
export function ShareTable({ result }: { readonly result: ShareResult }): React.JSX.Element {
  const styles = useStyles();
  const page = usePageStyles();
  const { bath, basis, shares, sums, findings } = result;
  return (
    <section className={page.page} aria-label="Shares">
      <h3 className={page.section}>{`Bath ${bath}${basis === undefined ? "" : `, by ${basis}`}`}</h3>
      <table className={styles.table} aria-label="Each claim's share">
        <thead>
          <tr>
            {["Claim", "Units", "Part", "Share"].map((header) => (
              <th key={header} scope="col">
                {header}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {shares.map(({ claim, units, part, share }) => (
            <tr key={claim}>
              <th scope="row">{claim}</th>
              <td>{units === undefined ? "not known" : figure(units, 2)}</td>
              <td>{part === undefined ? "" : percent(part)}</td>
              <td>{orUnknown(share)}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          {sums.map(([name, value]) => (
            <tr key={name}>
              <th scope="row" colSpan={3}>
                {name}
              </th>
              <td>{orUnknown(value)}</td>
            </tr>
          ))}
        </tfoot>
      </table>
      <FindingsList findings={findings} />
    </section>
  );
}
