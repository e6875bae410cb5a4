/** Where a rising function has become positive, with the last place where it had not. */
export interface UpperEnd {
  readonly high: number;
  readonly atHigh: number;
  readonly lower: { readonly low: number; readonly atLow: number } | undefined;
}

const growth = 3;

/** Looks upward from a first guess; undefined where the function is not positive up to `most`. */
export function upperEnd(rising: (argument: number) => number, first: number, most: number): UpperEnd | undefined {
  let lower: UpperEnd["lower"];
  let place = first;
  for (;;) {
    const value = rising(place);
    if (value > 0) return { high: place, atHigh: value, lower };
    if (place >= most) return undefined;
    lower = { low: place, atLow: value };
    place = Math.min(most, place * growth);
  }
}
