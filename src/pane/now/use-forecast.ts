import { useContext, useEffect, useState } from "react";

import { waitingSentence } from "../../advice/waiting.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { FiguresContext } from "../frame/figures-context.ts";

interface Forecast {
  readonly log: LogSnapshot;
  readonly bath: string;
  readonly sentences: readonly string[];
}

const notLoaded = "How long the bath lasts could not be worked out: check the connection, then open the pane again.";

/**
 * What the log says about what comes for a bath. Its code comes once the pane is up, so that the pane is up sooner.
 * Sentences of another log or bath are never shown.
 */
export function useForecast(log: LogSnapshot, bath: string | undefined, system: UnitSystem): readonly string[] {
  const [known, setKnown] = useState<Forecast>();
  const { noting, rootOf } = useContext(FiguresContext);
  useEffect(() => {
    if (bath === undefined) return;
    let wanted = true;
    const say = (sentences: readonly string[]): void => {
      if (wanted) setKnown({ log, bath, sentences });
    };
    import(/* webpackChunkName: "pane-forecast" */ "../../advice/readings/forecast.ts").then(
      ({ forecast }) => {
        const { answer, unlike } = noting(() => forecast(log, bath, system));
        say(unlike.length === 0 ? answer : [waitingSentence(unlike, rootOf)]);
      },
      () => {
        say([notLoaded]);
      },
    );
    return () => {
      wanted = false;
    };
  }, [log, bath, system, noting, rootOf]);
  return known?.log === log && known.bath === bath ? known.sentences : [];
}
