/** Runs a command's work; a failure is said in its own words, without a stack, and ends the process as failed. */
export async function sayFailure(work: () => Promise<void>): Promise<void> {
  try {
    await work();
  } catch (error) {
    // Loaded only now, as it brings more with it than a start has time for.
    const officeTools = await import("office-addin-cli");
    // oxlint-disable-next-line typescript/no-deprecated -- Its tag means a parameter that is gone, not the function.
    officeTools.logErrorMessage(error);
    process.exit(1);
  }
}
