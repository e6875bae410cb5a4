import { makeStyles, tokens } from "@fluentui/react-components";

import { rowFacts } from "../../advice/bath-facts.ts";
import { money, percent } from "../../advice/wording/figures.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";

const useStyles = makeStyles({
  table: {
    width: "100%",
    borderCollapse: "collapse",
    fontVariantNumeric: "tabular-nums",
    "& td, & th": {
      padding: "6px 0",
      borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
      textAlign: "left",
      fontWeight: tokens.fontWeightRegular,
    },
  },
  amount: { "&&": { textAlign: "right" } },
  part: { color: tokens.colorNeutralForeground3, "&&": { textAlign: "right" } },
});

/** Each claim's share of this bath, as the Costs sheet has it. */
export function ClaimShares({
  log,
  bath,
}: {
  readonly log: LogSnapshot;
  readonly bath: string;
}): React.JSX.Element | null {
  const styles = useStyles();
  const page = usePageStyles();
  const { shareBath, shareBasis, poolTotal } = log.fields;
  const shares = log.rows.shares.map(rowFacts).filter((row) => row.number("share") !== undefined);
  if (shareBath !== bath || shares.length === 0 || typeof poolTotal !== "number") return null;
  return (
    <section aria-label="Claims" className={page.page} style={{ rowGap: 8 }}>
      <h2 className={page.section}>Claims</h2>
      <p
        className={page.quiet}
      >{`${money(poolTotal)} shared${typeof shareBasis === "string" ? ` by ${shareBasis}` : ""}, with the cost lines.`}</p>
      <table className={styles.table}>
        <tbody>
          {shares.map((row) => (
            <tr key={row.text("claim")}>
              <th scope="row">{row.text("claim")}</th>
              <td className={styles.part}>{percent(row.number("weight") ?? 0)}</td>
              <td className={styles.amount}>{money(row.number("share") ?? 0)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
