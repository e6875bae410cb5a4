function wholeNumber(name: string, usual: number): number {
  const given = process.env[name];
  if (given === undefined) return usual;
  if (!/^-?\d+$/.test(given)) throw new RangeError(`${name} is ${given}; a whole number is wanted`);
  return Number(given);
}

/** One seed for every property, so that a test passes today if it passed yesterday; a soak gives others. */
export const randomSeed = wholeNumber("RANDOM_SEED", 20270301);

/** A soak runs every property this many times as often. */
const times = wholeNumber("RANDOM_TIMES", 1);

/** The number of runs of a property, for those that take another than the usual hundred. */
export const runs = (usual: number): { readonly numRuns: number } => ({ numRuns: usual * times });
