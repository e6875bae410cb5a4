/** Runs a command's work; a failure is said in its own words, without a stack, and ends the process as failed. */
export async function sayFailure(work: () => Promise<void>): Promise<void> {
  try {
    await work();
  } catch (error) {
    // Loaded only now, as it brings more with it than a start has time for.
    const { logErrorMessage } = await import("office-addin-cli");
    logErrorMessage(error);
    process.exit(1);
  }
}
