import { Button } from "@fluentui/react-components";

import { countOf } from "../../../advice/wording/figure-words.ts";
import type { SheetReading } from "../../../excel/read/read-active-sheet.ts";
import { usePageStyles } from "../../controls/use-page-styles.ts";
import { adoptKinds, type AdoptTable } from "../adopt-kinds.ts";
import { cellWords, isBlankCell } from "../cell-words.ts";
import { pickedPlace, pickedTable } from "../picked-answers.ts";
import { tableBelow } from "../sheet-table.ts";
import { Pick } from "./adopt-fields.tsx";

interface Props {
  readonly sheet: SheetReading | undefined;
  readonly headingRow: number;
  readonly table: AdoptTable;
  readonly onRead: () => void;
  readonly onHeadingRow: (row: number) => void;
  readonly onTable: (table: AdoptTable) => void;
}

/** Headings stand near the top. */
const rowsOffered = 40;

function leftOut({ rowsLeftOut, columnsLeftOut, values }: SheetReading): string | undefined {
  if (rowsLeftOut === 0 && columnsLeftOut === 0) return undefined;
  const columns = columnsLeftOut === 0 ? "" : `, and ${countOf(columnsLeftOut, "column")} at the right`;
  return `The sheet is larger than is read at once: ${countOf(values.length, "row")} read; not read: ${countOf(rowsLeftOut, "row")} further down${columns}. Split it to adopt the rest.`;
}

/** Which sheet, where its headings are, what its rows are. */
export function AdoptSheetStep({ sheet, headingRow, table, onRead, onHeadingRow, onTable }: Props): React.JSX.Element {
  const page = usePageStyles();
  const tooLarge = sheet === undefined ? undefined : leftOut(sheet);
  const headings = (sheet?.values.slice(0, rowsOffered) ?? []).flatMap((row, index) => {
    const words = row.map(cellWords).filter((text) => text !== "");
    return row.every(isBlankCell)
      ? []
      : [
          {
            value: String(index),
            words: `${String(index + (sheet?.firstRow ?? 0))}: ${words.join(" · ").slice(0, 80)}`,
          },
        ];
  });
  return (
    <>
      <p className={page.quiet}>
        Click the tab of your sheet in Excel, then read it. Your sheet is only read, never changed.
      </p>
      <Button
        size="large"
        appearance={sheet === undefined ? "primary" : "secondary"}
        className={page.big}
        onClick={onRead}
      >
        {sheet === undefined ? "Read this sheet" : "Read another sheet"}
      </Button>
      {sheet === undefined ? null : (
        <>
          <p role="status">{`Sheet ${sheet.name}: ${countOf(tableBelow(sheet, headingRow).rows.length, "row")} below the headings.`}</p>
          {tooLarge === undefined ? null : <p className={page.caution}>{tooLarge}</p>}
          <Pick
            label="Row with the headings"
            value={String(headingRow)}
            none=""
            options={headings}
            onPick={(value) => {
              onHeadingRow(pickedPlace(value) ?? headingRow);
            }}
          />
          <Pick
            label="Each row is"
            value={table}
            none=""
            options={adoptKinds.map((kind) => ({ value: kind.table, words: `${kind.name}: ${kind.about}` }))}
            onPick={(value) => {
              const kind = pickedTable(value);
              if (kind !== undefined) onTable(kind);
            }}
          />
        </>
      )}
    </>
  );
}
