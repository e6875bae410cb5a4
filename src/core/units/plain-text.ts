const ordinary = /^[\x20-\x7e]*$/;

/** Full-width forms, and the signs that Unicode holds for a whole unit: ℃, ℉, ℓ, ㎎, ㎥. */
const oneSignForms = /[\uff01-\uffee\u2100-\u214f\u3371-\u33df]/g;
const fractionSigns = /[¼-¾⅐-⅟↉]/g;
/** Hyphens, dashes and minus signs of any width. */
const minusSigns = /[\u2010-\u2015\u2212\ufe58\ufe63]/g;
/** Marks that show nothing: zero-width spaces and joiners, marks of direction, byte order. */
const invisible = /[\u00ad\u061c\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff]/g;

function normalForm(sign: string): string {
  return sign.normalize("NFKC");
}

const anyDigit = /\p{Nd}/u;
const otherDigits = /[^\P{Nd}0-9]/gu;

/** Unicode keeps the ten digits of a script side by side, so a digit is its distance from the first of them. */
function plainDigit(digit: string): string {
  const styled = normalForm(digit);
  if (/^\d$/.test(styled)) return styled;
  const code = digit.codePointAt(0) ?? 0;
  let zero = code;
  while (code - zero < 9 && anyDigit.test(String.fromCodePoint(zero - 1))) zero -= 1;
  return String(code - zero);
}

/**
 * A text with one sign for each thing: plain digits for those of other scripts, plain letters for full-width
 * ones, one blank for any run of spaces, "-" for every minus, "/" for every stroke, " 1/2" for ½. Superscripts stay,
 * since m³ and 10³ carry a meaning that a plain 3 has not.
 */
export function plainText(text: string): string {
  if (ordinary.test(text)) return text.replace(/ {2,}/g, " ").trim();
  return text
    .replace(invisible, "")
    .replace(oneSignForms, normalForm)
    .replace(fractionSigns, (sign) => ` ${normalForm(sign)}`)
    .replace(otherDigits, plainDigit)
    .replace(/\u066b/g, ".")
    .replace(/\u066c/g, "'")
    .replace(minusSigns, "-")
    .replace(/[\u2044\u2215]/g, "/")
    .replace(/\u2236/g, ":")
    .replace(/[\u2018\u2019]/g, "'")
    .replace(/\u03bc/g, "µ")
    .replace(/[\s\p{Zs}]+/gu, " ")
    .trim();
}
