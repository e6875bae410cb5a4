/** One tab at a time writes a log. The browser frees the lock with the tab that holds it. */
export function takeLog(id: string): Promise<boolean> {
  // Without locks the revisions in the storage still keep two tabs from writing over each other.
  if (!("locks" in navigator)) return Promise.resolve(true);
  return new Promise((resolve, reject) => {
    navigator.locks
      .request(`bathsheet log ${id}`, { ifAvailable: true }, (lock) => {
        resolve(lock !== null);
        return lock === null ? undefined : new Promise(() => undefined);
      })
      .catch(reject);
  });
}
