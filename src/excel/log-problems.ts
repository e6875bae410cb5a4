/** Problems with a log that the pane answers with an offer of its own. */
import { LogProblem, type LogProblemText } from "./office-problems.ts";

/** A log of an earlier version: nothing is wrong with it, and an upgrade keeps every row. */
export class OlderLog extends LogProblem {
  readonly version: number;
  readonly newest: number;

  constructor(version: number, newest: number) {
    super({
      what: `This log is of version ${String(version)}; Bathsheet now works with version ${String(newest)}.`,
      remedy:
        "Upgrade it: new sheets and columns are added, formulas brought up to date, and everything that was typed stays.",
    });
    this.version = version;
    this.newest = newest;
  }
}

/** A log that a later Bathsheet made or upgraded. */
export class NewerLog extends LogProblem {
  readonly version: number;

  constructor(version: number, newest: number) {
    super({
      what: `This log is of version ${String(version)}, and this Bathsheet knows logs up to version ${String(newest)}.`,
      remedy:
        "Close and open the workbook again to load the newest Bathsheet. Until then fill the log in by hand; nothing was changed.",
    });
    this.version = version;
  }
}

/** A part of the log is missing or has another name. */
export class DamagedLog extends LogProblem {
  constructor(text: LogProblemText) {
    super(text);
    this.name = "DamagedLog";
  }
}

/** The person cancelled; the workbook is whole, as `what` says. */
export class Cancelled extends LogProblem {
  constructor(what: string) {
    super({ what, remedy: "Start again whenever you like." });
    this.name = "Cancelled";
  }
}
