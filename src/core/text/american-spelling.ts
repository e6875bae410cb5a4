/** The American spelling of a British one, as far as the words of this trade go: sulphuric, bisulphate, litre, metre. */
export function americanSpelling(word: string): string {
  return word.replace(/(s)ulph/gi, "$1ulf").replace(/(lit|met)re(?=s?(?![a-z]))/gi, "$1er");
}
