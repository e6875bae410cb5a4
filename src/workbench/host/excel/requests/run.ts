import { RequestContextObject } from "./request-context.ts";
import type { Session } from "./session.ts";

/**
 * Stands for Excel.run: a fresh context, the person's function, a last sync. Before the function may stand options, or
 * an object whose context Excel would use again.
 */
export function runner(session: Session): typeof Excel.run {
  return async (first: unknown, second?: unknown): Promise<unknown> => {
    const batch = (typeof first === "function" ? first : second) as (context: Excel.RequestContext) => Promise<unknown>;
    const waits =
      typeof first === "object" && first !== null && "delayForCellEdit" in first && first.delayForCellEdit === true;
    while (waits && session.isCellBeingEdited()) await new Promise((resume) => setTimeout(resume, 50));
    const context = new RequestContextObject(session);
    const value = await batch(context.face);
    await context.sync();
    return value;
  };
}
