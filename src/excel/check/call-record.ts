/** What Excel hands to the worksheet functions. The add-in itself keeps no such record: only the page of the checks does. */
export interface ReceivedCall {
  readonly id: string;
  readonly received: readonly unknown[];
}

type CellFunction = (...received: readonly unknown[]) => unknown;

export class CallRecord {
  private readonly listeners = new Set<ReceivedCall[]>();

  /** The function, with each of its calls noted while somebody listens. */
  noting(id: string, answer: CellFunction): CellFunction {
    return (...received) => {
      for (const calls of this.listeners) calls.push({ id, received });
      return answer(...received);
    };
  }

  /** The calls that come while `work` runs. */
  async during(work: () => Promise<void>): Promise<readonly ReceivedCall[]> {
    const calls: ReceivedCall[] = [];
    this.listeners.add(calls);
    try {
      await work();
    } finally {
      this.listeners.delete(calls);
    }
    return calls;
  }
}

/** Notes the calls of every function that is registered from now on; call it before functions.js. */
export function recordCalls(): CallRecord {
  const record = new CallRecord();
  const associate = CustomFunctions.associate as (id: string, answer: CellFunction) => void;
  Object.assign(CustomFunctions, {
    associate: (id: string, answer: CellFunction): void => {
      associate.call(CustomFunctions, id, record.noting(id, answer));
    },
  });
  return record;
}
