import { makeStyles, tokens } from "@fluentui/react-components";

import { money, percent } from "../../advice/wording/figures.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { shareResult } from "../claims/share-result.ts";
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
  const result = shareResult(log, bath);
  const shares = result?.shares.filter(({ share }) => share !== undefined) ?? [];
  if (result === undefined || shares.length === 0) return null;
  const pool = shares.reduce((sum, { share }) => sum + (share ?? 0), 0);
  return (
    <section aria-label="Claims" className={page.page} style={{ rowGap: 8 }}>
      <h2 className={page.section}>Claims</h2>
      <p
        className={page.quiet}
      >{`${money(pool)} shared${result.basis === undefined ? "" : ` by ${result.basis}`}, with the cost lines.`}</p>
      <table className={styles.table}>
        <tbody>
          {shares.map(({ claim, part, share }) => (
            <tr key={claim}>
              <th scope="row">{claim}</th>
              <td className={styles.part}>{percent(part ?? 0)}</td>
              <td className={styles.amount}>{money(share ?? 0)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
