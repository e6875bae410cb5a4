import { Button, Spinner } from "@fluentui/react-components";
import { type ComponentType, useEffect, useState } from "react";

import { LogProblem } from "../../excel/office-problems.ts";
import { ProblemBar } from "../controls/problem-bar.tsx";
import { usePageStyles } from "../controls/use-page-styles.ts";

function notLoaded(error: unknown): LogProblem {
  return new LogProblem(
    { what: "This view could not be loaded. The log is untouched.", remedy: "Check the connection, then try again." },
    error,
  );
}

/** What shows until a view is there, or where it does not come. */
type Waiting = "in words" | "unseen";

/** A view whose code comes when it is first opened and then stays; one that does not come says so and can be asked for again. */
export function lazyView<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
  waiting: Waiting = "in words",
): ComponentType<Props> {
  let kept: ComponentType<Props> | undefined;
  return function LazyView(props: Props): React.JSX.Element | null {
    const page = usePageStyles();
    const [View, setView] = useState<ComponentType<Props> | undefined>(() => kept);
    const [failure, setFailure] = useState<LogProblem>();
    const [tries, setTries] = useState(0);
    useEffect(() => {
      if (kept !== undefined) return;
      let wanted = true;
      load().then(
        (loaded) => {
          kept = loaded;
          if (wanted) setView(() => loaded);
        },
        (error: unknown) => {
          if (wanted) setFailure(notLoaded(error));
        },
      );
      return () => {
        wanted = false;
      };
    }, [tries]);
    if (View !== undefined) return <View {...props} />;
    if (waiting === "unseen") return null;
    if (failure === undefined) return <Spinner label="Opening…" />;
    return (
      <div className={page.page}>
        <ProblemBar problem={failure} />
        <Button
          appearance="primary"
          size="large"
          className={page.big}
          onClick={() => {
            setFailure(undefined);
            setTries(tries + 1);
          }}
        >
          Try again
        </Button>
      </div>
    );
  };
}
