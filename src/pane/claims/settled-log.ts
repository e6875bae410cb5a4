import { mendingPlace, typedOverWords } from "../../advice/waiting.ts";
import { readLog } from "../../excel/log-workbook.ts";
import { LogProblem } from "../../excel/office-problems.ts";
import { isUnfinished, type LogSnapshot } from "../../joblog/model/log-snapshot.ts";

/** How often the log is looked at, and how long apart: Excel's functions answer within seconds, or not at all. */
const looks = 8;
const lookMs = 750;

const pause = (): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve, lookMs);
  });

/**
 * The log once every figure of it is what its formula gives: what is frozen before that stands for ever. Rejects with a
 * LogProblem that names a cell that goes on showing something else.
 */
export async function settledLog(): Promise<LogSnapshot | undefined> {
  const { checkedLog } = await import(/* webpackChunkName: "pane-figures" */ "../../advice/checked-log.ts");
  for (let look = 1; ; look += 1) {
    const read = await readLog();
    const unlike = read === undefined ? undefined : checkedLog(read).anyUnlike();
    if (unlike === undefined) return read;
    if (look < looks) {
      await pause();
      continue;
    }
    throw new LogProblem({
      what: isUnfinished(unlike.shown)
        ? `No copy was made: Excel has not worked out ${unlike.place}${unlike.under === undefined ? "" : `, ${unlike.under}`}.`
        : `No copy was made: ${typedOverWords(unlike)}`,
      remedy: `Wait until Excel has finished, or choose ${mendingPlace(unlike)}. Then try again.`,
    });
  }
}
