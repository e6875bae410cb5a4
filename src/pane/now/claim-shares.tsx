import { makeStyles, tokens } from "@fluentui/react-components";

import { rowFacts } from "../../advice/bath-facts.ts";
import { bathFacts } from "../../advice/bath-values.ts";
import { moneyIn, percent } from "../../advice/wording/figures.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { isSameText } from "../../joblog/model/same-text.ts";
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

interface Shared {
  readonly sentence: string;
  readonly shares: readonly { readonly claim: string; readonly part: string; readonly amount: string }[];
}

/** Each claim's share of this bath, as the Costs sheet has it; undefined where nothing of it is shared out. */
export function sharesOf(log: LogSnapshot, bath: string): Shared | undefined {
  const facts = bathFacts(log, bath);
  const shares = log.rows.shares
    .filter(({ cells }) => isSameText(String(cells.bath ?? ""), bath))
    .map(rowFacts)
    .filter((row) => (row.number("unitsUsed") ?? 0) > 0 && row.number("share") !== undefined);
  const shared = facts?.number("costShared");
  if (shares.length === 0 || shared === undefined) return undefined;
  const { currency } = log.fields;
  const basis = facts?.text("basisUsed");
  return {
    sentence: `${moneyIn(shared, currency)} shared${basis === undefined ? "" : ` by ${basis}`}, with the cost lines.`,
    shares: shares.map((row) => ({
      claim: row.text("claim") ?? "",
      part: percent(row.number("weight") ?? 0),
      amount: moneyIn(row.number("share") ?? 0, currency),
    })),
  };
}

export function ClaimShares({ shared: { sentence, shares } }: { readonly shared: Shared }): React.JSX.Element {
  const styles = useStyles();
  const page = usePageStyles();
  return (
    <section aria-label="Claims" className={page.page} style={{ rowGap: 8 }}>
      <h2 className={page.section}>Claims</h2>
      <p className={page.quiet}>{sentence}</p>
      <table className={styles.table}>
        <tbody>
          {shares.map(({ claim, part, amount }) => (
            <tr key={claim}>
              <th scope="row">{claim}</th>
              <td className={styles.part}>{part}</td>
              <td className={styles.amount}>{amount}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
