/** Excel holds at most this many characters in a cell. */
const longestText = 32_767;

/** Characters at which Excel (or a program that opens an export) starts to read a formula. */
const startsLikeFormula = /^[=+\-@\t\r\n']/;

/** Digits first or last with separators between: numbers, percents, money, times, dates, fractions, 3E5. */
const looksLikeNumberOrDate = /^\s*[$€£¥(]?\s*[.,]?\d[\d\s.,:/\-+%eE]*\s*(?:am?|pm?)?\)?\s*[%€£¥]?\s*$/i;

/** 1 Mar, Mar-27, March 1, 2027: a month's name with digits beside it and nothing else. */
const looksLikeMonth =
  /^(?=.*\d)[\d\s\-/.,:]*(?:jan|feb|mar|apr|may|june?|july?|aug|sept?|oct|nov|dec|january|february|march|april|august|(?:sept|nov|dec)ember|october)\.?[\d\s\-/.,:]*$/i;

const looksLikeBoolean = /^\s*(?:true|false)\s*$/i;

const looksLikeError = /^\s*#/;

/**
 * The text to put into `range.values` or `range.formulas` so that the cell shows exactly `text` and
 * Excel reads neither a formula nor a number, date, truth value or error out of it. A leading
 * apostrophe is Excel's own quote mark: it is not part of the cell's value. Text longer than a cell
 * can hold is cut.
 */
export function cellText(text: string): string {
  const kept = text.slice(0, longestText);
  const needsQuote =
    startsLikeFormula.test(kept) ||
    looksLikeNumberOrDate.test(kept) ||
    looksLikeMonth.test(kept) ||
    looksLikeBoolean.test(kept) ||
    looksLikeError.test(kept);
  return needsQuote ? `'${kept}` : kept;
}

/** A value for `range.values` or `range.formulas`: text made literal, anything else as it is. */
export function cellValue(value: string | number | boolean): string | number | boolean {
  return typeof value === "string" ? cellText(value) : value;
}
