import { inputsNow, isBuiltFrom, removeStamp, writeStamp } from "./build/build-stamp.ts";
import { sayFailure } from "./say-failure.ts";

/** Builds dist/, unless it is already what would be built; what builds is loaded only then. */
export async function build(): Promise<void> {
  const inputs = await inputsNow();
  if (await isBuiltFrom(inputs)) {
    console.log("dist/ is up to date");
    return;
  }
  await removeStamp();
  const { fillDist } = await import("./build/fill-dist.ts");
  await fillDist();
  await writeStamp(inputs);
}

if (process.argv[1] === import.meta.filename) await sayFailure(build);
