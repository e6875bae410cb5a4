import { Link, makeStyles, Spinner } from "@fluentui/react-components";
import { useEffect, useState } from "react";

import { LogProblem } from "../../excel/office-problems.ts";
import { FurtherTitle } from "../controls/further-title.tsx";
import { ProblemBar } from "../controls/problem-bar.tsx";
import { usePageStyles } from "../controls/use-page-styles.ts";
import { type AboutData, aboutData } from "./about-data.ts";

const useStyles = makeStyles({
  summary: { minHeight: "44px", display: "list-item", alignContent: "center", cursor: "pointer" },
});

async function load(): Promise<AboutData> {
  try {
    const response = await fetch("about.json");
    return aboutData.parse(await response.json());
  } catch (error) {
    throw new LogProblem(
      { what: "What this version is made of could not be loaded.", remedy: "Check the connection." },
      error,
    );
  }
}

/** Opens beside the workbook: Excel's pane shows no second page. */
function PageLink({ to, children }: { readonly to: string; readonly children: string }): React.JSX.Element {
  return (
    <Link href={to} target="_blank" rel="noreferrer" inline>
      {children}
    </Link>
  );
}

function Made({ data }: { readonly data: AboutData }): React.JSX.Element {
  const page = usePageStyles();
  const styles = useStyles();
  const { constants, packages, version } = data;
  return (
    <>
      <p>{`Version ${version}, under the MIT license. No real Excel has run it yet: it was tested in a spreadsheet in the browser that stands in for Excel.`}</p>
      <section aria-labelledby="about-trust">
        <h3 id="about-trust" className={page.section}>
          How far to trust it
        </h3>
        <p>
          {`The chemistry rests on ${String(constants.count)} constants; a public copy confirms ${String(constants.confirmed)} of them. `}
          <PageLink to="reference.html#trust">What was measured, and what is left out</PageLink>
        </p>
        <details>
          <summary className={styles.summary}>Where the confirmed constants were found</summary>
          <ul className={page.list}>
            {constants.confirmedBy.map(([collection, count]) => (
              <li key={collection}>{`${collection}: ${String(count)}`}</li>
            ))}
          </ul>
        </details>
      </section>
      <section aria-labelledby="about-packages">
        <h3 id="about-packages" className={page.section}>
          Made with the work of others
        </h3>
        <p>
          {`Parts of ${String(packages.length)} open-source packages are in it. `}
          <PageLink to="licenses.txt">Their licenses</PageLink>
        </p>
        <details>
          <summary className={styles.summary}>The packages</summary>
          <ul className={page.list}>
            {packages.map((one) => (
              <li key={`${one.name} ${one.version}`}>{`${one.name} ${one.version} (${one.license})`}</li>
            ))}
          </ul>
        </details>
      </section>
      <section aria-labelledby="about-sends">
        <h3 id="about-sends" className={page.section}>
          What leaves this computer
        </h3>
        <p>
          Nothing by Bathsheet: no account, no usage data. Its pages load Microsoft’s script office.js from Microsoft,
          and Excel keeps a workbook where you keep it, in a cloud folder too.
        </p>
      </section>
    </>
  );
}

/** Which version this is, how far to trust it, whose work is in it, and what leaves the computer. */
export function AboutView({ onMore }: { readonly onMore: () => void }): React.JSX.Element {
  const page = usePageStyles();
  const [data, setData] = useState<AboutData>();
  const [problem, setProblem] = useState<LogProblem>();
  useEffect(() => {
    load().then(setData, (error: unknown) => {
      if (error instanceof LogProblem) setProblem(error);
    });
  }, []);
  return (
    <div className={page.page}>
      <FurtherTitle title="About" about="The version, its sources and its licenses." onMore={onMore} />
      {problem === undefined ? null : <ProblemBar problem={problem} />}
      {data !== undefined ? <Made data={data} /> : problem === undefined ? <Spinner label="Opening…" /> : null}
    </div>
  );
}
