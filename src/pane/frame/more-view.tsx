import { Button, makeStyles, tokens } from "@fluentui/react-components";
import type { FluentIcon } from "@fluentui/react-icons";
import { BuildingShopRegular } from "@fluentui/react-icons/svg/building-shop";
import { CompassNorthwestRegular } from "@fluentui/react-icons/svg/compass-northwest";
import { InfoRegular } from "@fluentui/react-icons/svg/info";
import { LightbulbRegular } from "@fluentui/react-icons/svg/lightbulb";
import { MathFormulaRegular } from "@fluentui/react-icons/svg/math-formula";

import { useFocusOnShow } from "../controls/use-focus-on-show.ts";
import { usePageStyles } from "../controls/use-page-styles.ts";
import type { FurtherView } from "./view-tabs.tsx";

interface Further {
  readonly view: FurtherView | "tour";
  readonly name: string;
  readonly about: string;
  readonly icon: FluentIcon;
}

const further: readonly Further[] = [
  { view: "shop", name: "Shop", about: "Limits, tanks, concentrates, people and stock.", icon: BuildingShopRegular },
  { view: "try", name: "Try", about: "What-if figures that need no entry.", icon: LightbulbRegular },
  { view: "functions", name: "Functions", about: "Every worksheet function, to search.", icon: MathFormulaRegular },
  { view: "tour", name: "Tour", about: "Five steps: what is where.", icon: CompassNorthwestRegular },
  { view: "about", name: "About", about: "The version, how far to trust it, its licenses.", icon: InfoRegular },
];

const useStyles = makeStyles({
  list: { listStyleType: "none", margin: 0, padding: 0, display: "grid", rowGap: tokens.spacingVerticalS },
  entry: {
    width: "100%",
    maxWidth: "none",
    minHeight: "64px",
    justifyContent: "flex-start",
    textAlign: "left",
    columnGap: tokens.spacingHorizontalM,
    padding: `${tokens.spacingVerticalS} ${tokens.spacingHorizontalM}`,
    fontWeight: tokens.fontWeightRegular,
  },
});

/** The views that have no tab of their own; `returned`: a person came back from one of them. */
export function MoreView({
  returned,
  onOpen,
  onTour,
}: {
  readonly returned: boolean;
  readonly onOpen: (view: FurtherView) => void;
  readonly onTour: () => void;
}): React.JSX.Element {
  const page = usePageStyles();
  const styles = useStyles();
  const heading = useFocusOnShow<HTMLHeadingElement>(returned);
  return (
    <section className={page.page} aria-label="More">
      <h2 ref={heading} tabIndex={-1} className={page.title}>
        More
      </h2>
      <ul className={styles.list}>
        {further.map(({ view, name, about, icon: Icon }) => (
          <li key={view}>
            <Button
              size="large"
              icon={<Icon />}
              className={styles.entry}
              aria-label={name}
              aria-describedby={`about-${view}`}
              onClick={() => {
                if (view === "tour") onTour();
                else onOpen(view);
              }}
            >
              <span>
                <span className={page.choiceName}>{name}</span>
                <span id={`about-${view}`} className={page.choiceAbout}>
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
