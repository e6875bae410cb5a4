import type { OSpreadsheet } from "../library.ts";

/** Colours and conditions in square brackets, which the grid does not read; elapsed time such as [h] stays. */
const colorOrCondition = /\[(?!h+\]|m+\]|s+\])[^\]]*\]/gi;

/** Space as wide as a character (`_)`), which the grid does not read. */
const spaceLikeCharacter = /_./g;

/** Draws a number in full where the grid can read nothing of a format, such as a fraction's. */
const inFull = "0.##########";

/** A text of no letters, which draws nothing and so tells two spellings of one format apart. */
const noText = '""';

function generalIsBlank(format: string): string {
  return format.trim().toLowerCase() === "general" ? "" : format;
}

/** Excel's number formats in the grid's spelling, simplified where the grid lacks something, and back. */
export class FormatSpelling {
  private readonly library: OSpreadsheet;
  /** Excel's text by the grid's, where they differ. */
  private readonly originals = new Map<string, string>();
  private readonly known = new Map<string, string>();

  constructor(library: OSpreadsheet) {
    this.library = library;
  }

  private readable(format: string): boolean {
    try {
      for (const value of [1234.5, -1, 0])
        this.library.helpers.formatValue(value, { format, locale: this.library.DEFAULT_LOCALE });
      return true;
    } catch {
      // The grid's parser throws for what it cannot read; the caller then tries a simpler format.
      return false;
    }
  }

  /** The nearest format that the grid can draw, each of Excel's by a spelling of its own; "" is General. */
  inGrid(format: string): string {
    const known = this.known.get(format);
    if (known !== undefined) return known;
    const chosen = this.choose(format);
    this.known.set(format, chosen);
    if (chosen !== generalIsBlank(format)) this.originals.set(chosen, format);
    return chosen;
  }

  private choose(format: string): string {
    if (generalIsBlank(format) === "" || this.readable(format)) return generalIsBlank(format);
    const plain = format.replace(colorOrCondition, "").replace(spaceLikeCharacter, "");
    const readable = [plain, plain.split(";")[0] ?? ""].find((one) => generalIsBlank(one) !== "" && this.readable(one));
    let chosen = (readable ?? inFull) + noText;
    while (this.originals.has(chosen)) chosen += noText;
    return chosen;
  }

  /** Excel's text of a format in the grid's spelling. */
  inExcel(format: string): string {
    return this.originals.get(format) ?? format;
  }
}
