const small = ["", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];
const tens = ["", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];

/** A number from 20 to 99 as a sentence begins with it. Throws a RangeError for any other. */
export function countInWords(count: number): string {
  const [ten, one] = [tens[Math.floor(count / 10)], small[count % 10]];
  if (ten === undefined || ten === "" || one === undefined) throw new RangeError(`${count} has no words here`);
  const words = one === "" ? ten : `${ten}-${one}`;
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}
