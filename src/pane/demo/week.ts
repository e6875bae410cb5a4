import { bathEvents } from "./week-baths.ts";
import { benchTestEvents } from "./week-bench-tests.ts";
import { careEvents } from "./week-care.ts";
import { costEvents } from "./week-costs.ts";
import type { WeekEvent } from "./week-event.ts";
import { itemEvents } from "./week-items.ts";
import { loadEvents } from "./week-loads.ts";
import { readingEvents } from "./week-readings.ts";
import { stockEvents } from "./week-stock.ts";

/** The invented week, 1 to 9 March 2027, in the order of time; what stands at one minute stays in this order. */
export const demoWeek: readonly WeekEvent[] = [
  ...itemEvents,
  ...careEvents,
  ...bathEvents,
  ...benchTestEvents,
  ...readingEvents,
  ...loadEvents,
  ...costEvents,
  ...stockEvents,
].sort((a, b) => (a.at === b.at ? 0 : a.at < b.at ? -1 : 1));
