/**
 * Functions newer than the file format's first edition, which files spell with a prefix (ECMA-376 and [MS-XLSX] 2.2.2;
 * the list is from memory of Excel's own files).
 */
const future = new Set(
  (
    "ACOT ACOTH AGGREGATE ARABIC BASE BETA.DIST BETA.INV BINOM.DIST BINOM.DIST.RANGE BINOM.INV BITAND BITLSHIFT BITOR " +
    "BITRSHIFT BITXOR BYCOL BYROW CEILING.MATH CHISQ.DIST CHISQ.DIST.RT CHISQ.INV CHISQ.INV.RT CHISQ.TEST CHOOSECOLS " +
    "CHOOSEROWS COMBINA CONCAT CONFIDENCE.NORM CONFIDENCE.T COT COTH COVARIANCE.P COVARIANCE.S CSC CSCH DAYS DECIMAL " +
    "DROP ENCODEURL ERF.PRECISE ERFC.PRECISE EXPAND EXPON.DIST F.DIST F.DIST.RT F.INV F.INV.RT F.TEST FLOOR.MATH " +
    "FORECAST.LINEAR FORMULATEXT GAMMA GAMMA.DIST GAMMA.INV GAMMALN.PRECISE GAUSS HSTACK HYPGEOM.DIST IFNA IFS ISFORMULA " +
    "ISOWEEKNUM LOGNORM.DIST LOGNORM.INV MAXIFS MINIFS MODE.MULT MODE.SNGL MUNIT NEGBINOM.DIST NORM.DIST NORM.INV " +
    "NORM.S.DIST NORM.S.INV NUMBERVALUE PDURATION PERCENTILE.EXC PERCENTILE.INC PERCENTRANK.EXC PERCENTRANK.INC " +
    "PERMUTATIONA PHI POISSON.DIST QUARTILE.EXC QUARTILE.INC RANDARRAY RANK.AVG RANK.EQ RRI SEC SECH SEQUENCE SHEET " +
    "SHEETS SKEW.P SORTBY STDEV.P STDEV.S SWITCH T.DIST T.DIST.2T T.DIST.RT T.INV T.INV.2T T.TEST TAKE TEXTAFTER " +
    "TEXTBEFORE TEXTJOIN TEXTSPLIT TOCOL TOROW UNICHAR UNICODE UNIQUE VALUETOTEXT VAR.P VAR.S VSTACK WEIBULL.DIST " +
    "WRAPCOLS WRAPROWS XLOOKUP XMATCH XOR Z.TEST"
  ).split(" "),
);

/** Two of them have a second prefix. */
const futureOnSheets = new Set(["FILTER", "SORT"]);

const call = /(?<![\w.])([A-Z][A-Z0-9.]*)(?=\()/gi;

/** Text between quotes is data, not a call; so are the names of sheets and what stands in brackets. */
const quoted = /("(?:[^"]|"")*"|'(?:[^']|'')*'|\[(?:'.|[^'[\]])*\])/;

function storedCall(written: string): string {
  const name = written.toUpperCase();
  if (name.startsWith("BATH.")) return `_xldudf_${name.replaceAll(".", "_")}`;
  if (futureOnSheets.has(name)) return `_xlfn._xlws.${name}`;
  return future.has(name) ? `_xlfn.${name}` : written;
}

/**
 * A formula as a file holds it: without "=", add-in functions by the prefix that Excel looks for when
 * it opens a workbook, newer functions by theirs.
 */
export function storedFormula(formula: string): string {
  return formula
    .replace(/^=/, "")
    .split(quoted)
    .map((part, index) => (index % 2 === 1 ? part : part.replaceAll(call, storedCall)))
    .join("");
}
