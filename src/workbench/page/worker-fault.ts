/** What a worker that failed says of it; undefined where its script did not even load. */
export function workerFault(event: Event): string | undefined {
  return event instanceof ErrorEvent && event.message !== "" ? event.message : undefined;
}
