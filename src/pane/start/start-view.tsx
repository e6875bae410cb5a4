import { Button, makeStyles, tokens } from "@fluentui/react-components";
import type { FluentIcon } from "@fluentui/react-icons";
import { useState } from "react";

import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { LogContent } from "../../joblog/model/definition.ts";
import { adoptSheet } from "../adopt/adopt-sheet.ts";
import { LongWorkView } from "../controls/long-work-view.tsx";
import { ProblemBar } from "../controls/problem-bar.tsx";
import { useFocusOnShow } from "../controls/use-focus-on-show.ts";
import { useLongWork } from "../controls/use-long-work.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import { lookAtDemo } from "./look-at-demo.ts";
import { blankStart, StartForm } from "./start-form.tsx";
import { startLog } from "./start-log.ts";

const useStyles = makeStyles({
  cards: { listStyleType: "none", margin: 0, padding: 0, display: "grid", rowGap: tokens.spacingVerticalM },
  card: {
    width: "100%",
    maxWidth: "none",
    minHeight: "96px",
    justifyContent: "flex-start",
    textAlign: "left",
    columnGap: tokens.spacingHorizontalM,
    fontWeight: tokens.fontWeightRegular,
  },
});

interface ChoiceCard {
  readonly id: string;
  readonly name: string;
  readonly about: string;
  readonly Icon: FluentIcon;
  readonly choose: () => void;
}

function Choices({
  cards,
  returned,
  problem,
}: {
  readonly cards: readonly ChoiceCard[];
  readonly returned: boolean;
  readonly problem: React.JSX.Element | null;
}): React.JSX.Element {
  const styles = useStyles();
  const page = usePageStyles();
  const heading = useFocusOnShow<HTMLHeadingElement>(returned);
  return (
    <section className={page.page} aria-label="First choice">
      <div>
        <h2 ref={heading} tabIndex={-1} className={page.title}>
          How do you want to begin?
        </h2>
        <p className={page.quiet}>This workbook holds no bath log yet. Bathsheet sends nothing anywhere.</p>
      </div>
      {problem}
      <ul className={styles.cards}>
        {cards.map(({ id, name, about, Icon, choose }) => (
          <li key={id}>
            <Button
              size="large"
              icon={<Icon />}
              className={styles.card}
              aria-label={name}
              aria-describedby={`about-${id}`}
              onClick={choose}
            >
              <span>
                <span className={page.choiceName}>{name}</span>
                <span id={`about-${id}`} className={page.choiceAbout}>
                  {about}
                </span>
              </span>
            </Button>
          </li>
        ))}
      </ul>
    </section>
  );
}

interface Props {
  readonly onBuilt: () => Promise<void>;
  /** A log was built, and the shop's own sheet is to follow. */
  readonly onAdopt: () => Promise<void>;
}

/** First run: the workbook holds no log yet. */
export function StartView({ onBuilt, onAdopt }: Props): React.JSX.Element {
  const work = useLongWork();
  const [chosen, setChosen] = useState<"choices" | "start" | "adopt">("choices");
  const [returned, setReturned] = useState(false);
  const [draft, setDraft] = useState(blankStart);

  const go = (to: typeof chosen): void => {
    setReturned(true);
    setChosen(to);
  };
  const demo = async (): Promise<void> => {
    setReturned(true);
    await work.start("Building the demo week", async (long) => {
      await lookAtDemo.run(undefined, long);
      await onBuilt();
    });
  };
  const build = async (system: UnitSystem, content: LogContent): Promise<void> => {
    await work.start("Building the log", async (long) => {
      await startLog.run({ system, content }, long);
      await (chosen === "adopt" ? onAdopt() : onBuilt());
    });
  };

  if (work.doing !== undefined) return <LongWorkView {...work} doing={work.doing} />;
  if (chosen !== "choices") {
    return (
      <StartForm
        draft={draft}
        reason={
          chosen === "adopt"
            ? "First the log itself, on sheets of its own. Then you choose your sheet and see every row before it is written. Your sheet stays as it is."
            : undefined
        }
        failure={work.problem}
        onChange={setDraft}
        onBack={() => {
          go("choices");
        }}
        onBuild={(system, content) => void build(system, content)}
      />
    );
  }
  const cards: readonly ChoiceCard[] = [
    {
      id: "demo",
      name: lookAtDemo.name,
      about: "An invented shop's log, filled in, to look around in.",
      Icon: lookAtDemo.icon,
      choose: () => void demo(),
    },
    {
      id: "start",
      name: "Start a log here",
      about: "A new log on sheets of its own, with your tank, water and concentrate.",
      Icon: startLog.icon,
      choose: () => {
        go("start");
      },
    },
    {
      id: "adopt",
      name: adoptSheet.name,
      about: "Bring in rows that you kept by hand. Your sheet is not changed.",
      Icon: adoptSheet.icon,
      choose: () => {
        go("adopt");
      },
    },
  ];
  return (
    <Choices
      cards={cards}
      returned={returned}
      problem={work.problem === undefined ? null : <ProblemBar problem={work.problem} />}
    />
  );
}
