/** Runs a command's work; a failure is said in its own words, without a stack, and ends the process as failed. */
export async function sayFailure(work: () => Promise<void>): Promise<void> {
  try {
    await work();
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exit(1);
  }
}
