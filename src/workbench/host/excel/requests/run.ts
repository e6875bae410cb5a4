import { RequestContextObject } from "./request-context.ts";
import type { Session } from "./session.ts";

/**
 * Stands for Excel.run: a fresh context or one that an earlier run made, the person's function, a last sync. Before the
 * function may stand options, or an object whose context Excel would use again.
 */
export function runner(session: Session): typeof Excel.run {
  const made = new WeakSet<object>();
  return async (first: unknown, second?: unknown): Promise<unknown> => {
    const batch = (typeof first === "function" ? first : second) as (context: Excel.RequestContext) => Promise<unknown>;
    const given = typeof first === "object" && first !== null && made.has(first);
    const waits =
      !given &&
      typeof first === "object" &&
      first !== null &&
      "delayForCellEdit" in first &&
      first.delayForCellEdit === true;
    while (waits && session.isCellBeingEdited()) await new Promise((resume) => setTimeout(resume, 50));
    const context = given ? (first as Excel.RequestContext) : new RequestContextObject(session).face;
    made.add(context);
    const value = await batch(context);
    await context.sync();
    return value;
  };
}
