import type { Workbook } from "../../workbook/workbook.ts";
import { checkSize } from "../limits.ts";
import { ApplicationObject } from "../sheets/application.ts";
import { WorkbookObject } from "../sheets/workbook-object.ts";
import { guard } from "./guard.ts";
import { factories } from "./object-factories.ts";
import type { ObjectFactories, Requests } from "./requests.ts";
import type { Session, Step, Traffic } from "./session.ts";

/**
 * What a step weighs on the wire beside the value it carries, in bytes: an action and the path of its object. Microsoft's
 * object model sends somewhat less; a test holds the two together.
 */
const stepBytes = 250;

function weightOf(value: unknown): number {
  return value === undefined ? 0 : JSON.stringify(value).length;
}

/** Objects need no tracking here: they hold their cells until the host is gone. */
const trackedObjects = { add: (): void => undefined, remove: (): void => undefined };

/** One batch after another against the workbook; stands for Excel.RequestContext. */
export class RequestContextObject
  implements Requests, Pick<Excel.RequestContext, "sync" | "workbook" | "application" | "runtime">
{
  readonly face: Excel.RequestContext;
  readonly session: Session;
  readonly trackedObjects = trackedObjects;
  readonly workbook: Excel.Workbook;
  readonly application: Excel.Application;
  readonly runtime: Excel.Runtime;
  readonly make: ObjectFactories = factories;
  private queue: Step[] = [];
  private bytesOut = 0;
  private bytesIn = 0;

  constructor(session: Session) {
    this.session = session;
    this.face = guard("RequestContext", this) as Excel.RequestContext;
    this.workbook = new WorkbookObject(this).face;
    this.application = new ApplicationObject(this).face;
    this.runtime = guard("Runtime", this.runtimeMembers()) as Excel.Runtime;
  }

  get workbookNow(): Workbook {
    return this.session.workbook;
  }

  get traffic(): Traffic {
    return this.session.traffic;
  }

  enqueue(kind: Step["kind"], location: string, run: () => void, value?: unknown): void {
    this.queue.push({ kind, location, run });
    this.bytesOut += stepBytes + weightOf(value);
  }

  brought(value: unknown): void {
    this.bytesIn += weightOf(value);
  }

  performNow(work: () => void): void {
    const waiting = this.queue;
    this.queue = [];
    try {
      work();
      for (const { run } of this.queue) run();
    } finally {
      this.queue = waiting;
    }
  }

  async sync<Value>(passThrough?: Value): Promise<Value> {
    const steps = this.queue;
    this.queue = [];
    const { bytesOut } = this;
    this.bytesOut = 0;
    this.bytesIn = 0;
    await Promise.resolve();
    this.session.traffic.largestOut = Math.max(this.session.traffic.largestOut, bytesOut);
    checkSize(bytesOut, "Request");
    if (steps.length > 0) this.session.traffic.trips += 1;
    this.session.requireNoCellEdit();
    const refusal = steps.length > 0 ? this.session.refusal() : undefined;
    if (refusal !== undefined) throw refusal;
    this.session.execute(steps);
    checkSize(this.bytesIn, "Response");
    return passThrough as Value;
  }

  private runtimeMembers(): object {
    const { session } = this;
    const enqueue = this.enqueue.bind(this);
    let wanted = true;
    return {
      get enableEvents(): boolean {
        return wanted;
      },
      set enableEvents(on: boolean) {
        wanted = on;
        enqueue("switch", "Runtime.enableEvents", () => {
          session.eventsEnabled = on;
        });
      },
      load: (): void => undefined,
    };
  }
}
