import { excelSize, parseLocalAddress, splitAddress } from "../../address.ts";
import { ExcelError } from "../../excel-error.ts";
import { ClientObject, partOf } from "../requests/client-object.ts";
import type { Requests } from "../requests/requests.ts";

/** Where page set-up keeps them, by the name that the saved state has for it. */
const note = "PageLayout.pageBreaks";

class PageBreakObject extends ClientObject<string, Excel.PageBreak> {
  protected readonly scalars: readonly string[] = [];

  constructor(requests: Requests, breaks: ClientObject<string, object>) {
    super(
      requests,
      "PageBreak",
      partOf(breaks, "page break", (sheet) => sheet),
    );
  }

  protected fetch(): unknown {
    return undefined;
  }
}

/** Page breaks are kept; the grid cannot show or print them. */
export class PageBreaksObject
  extends ClientObject<string, Excel.PageBreakCollection>
  implements Pick<Excel.PageBreakCollection, "add">
{
  protected readonly scalars: readonly string[] = [];

  constructor(requests: Requests, worksheet: ClientObject<string, object>) {
    super(
      requests,
      "PageBreakCollection",
      partOf(worksheet, "page breaks", (sheet) => sheet),
    );
  }

  protected fetch(): unknown {
    return undefined;
  }

  add(address: Excel.Range | string): Excel.PageBreak {
    this.change("add", (sheet, workbook) => {
      const at = typeof address === "string" ? parseLocalAddress(splitAddress(address).local, excelSize) : undefined;
      if (at === undefined) throw new ExcelError("InvalidArgument", "The stand-in takes a cell's address here.", "add");
      const notes = workbook.notesOf(sheet);
      const before = notes.get(note);
      notes.set(note, [...(Array.isArray(before) ? (before as readonly number[]) : []), at.row]);
    });
    return new PageBreakObject(this.requests, this).face;
  }
}
