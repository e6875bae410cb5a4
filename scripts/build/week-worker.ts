import { parentPort, workerData } from "node:worker_threads";

import { playedWeek } from "./demo-week-state.ts";

/** Types the week in a thread of its own; what it is given is the text of functions.js. */
const { state, content } = await playedWeek(workerData as string);
parentPort?.postMessage({ "demo-week.json": JSON.stringify(state), "demo-week-log.json": JSON.stringify(content) });
