/**
 * A stand-in for Excel: the grid library's model behind the part of Office.js that the add-in uses.
 * It needs no page, so tests and builders run the add-in's own code against it in Node.
 */
import type { ShownValues } from "../../files/write/known-values.ts";
import type { WorkbookState } from "../../state/workbook-state.ts";
import type { Area } from "./address.ts";
import { runner } from "./excel/requests/run.ts";
import { Session } from "./excel/requests/session.ts";
import { ExcelError } from "./excel-error.ts";
import { exportFile } from "./export-file.ts";
import { type CustomFunction, CustomFunctionError, errorCodes, FunctionBook } from "./functions/custom-functions.ts";
import { registerJoining } from "./functions/excel-joining.ts";
import { registerRound } from "./functions/excel-round.ts";
import type { FunctionsMetadata } from "./functions/metadata.ts";
import { functionBookKey, registerFunctions } from "./functions/register.ts";
import { ensureGroupBy, type Model, type OSpreadsheet, prepareLibrary } from "./library.ts";
import { makeOffice, type OfficeState, usualOffice } from "./office.ts";
import { workbookState } from "./state/make-state.ts";
import { restoreWorkbook } from "./state/restore-state.ts";
import { shownValues } from "./state/shown-values.ts";
import { type GivenValues, type TriedOut, tryOut } from "./state/try-out.ts";
import type { Lateness } from "./workbook/answers.ts";
import type { CellValue } from "./workbook/cells.ts";
import type { FormatSpelling } from "./workbook/format-spelling.ts";
import { registerBatchCommand } from "./workbook/grid/batch-command.ts";
import { spareNeedlessCellWork } from "./workbook/grid/grid-cells.ts";
import { listColorsWhenAsked } from "./workbook/grid/grid-colors.ts";
import { spareNeedlessTableWork } from "./workbook/grid/grid-tables.ts";
import { Workbook } from "./workbook/workbook.ts";

export interface HostOptions {
  /** Prefix of the custom functions in formulas. */
  readonly namespace?: string;
}

export interface Host {
  readonly Excel: typeof Excel;
  readonly Office: typeof Office;
  readonly CustomFunctions: typeof CustomFunctions;
  /** What Office says of itself and was told. */
  readonly office: OfficeState;
  readonly OfficeExtension: { readonly Error: typeof ExcelError };
  /** The open workbook; `restore` replaces it. */
  readonly workbook: Workbook;
  readonly model: Model;
  readonly session: Session;
  /** Registers what functions.json describes; call it before formulas that use the functions are written. */
  loadFunctions(metadata: FunctionsMetadata): void;
  save(): WorkbookState;
  restore(state: WorkbookState): void;
  /** Works a workbook out beside the open one and holds it against the values that its file gives. */
  tryOut(state: WorkbookState, given: GivenValues): TriedOut;
  /** What the cells show, for a state that was just saved. Throws NotWorkedOut. */
  shown(state: WorkbookState): ShownValues;
  /** Lets custom functions answer later than the write, in this workbook and those that are restored; undefined for at once. */
  answerLate(lateness: Lateness | undefined): void;
  /** All values of a sheet from A1 to its last filled cell. */
  values(sheetName: string): CellValue[][];
}

/** Objects of Excel's API that code may name as types or constants; enumerations are used as plain text. */
function excelNamespace(session: Session): typeof Excel {
  const createWorkbook = (file = ""): Promise<void> => {
    session.openNew(Uint8Array.from(atob(file), (character) => character.charCodeAt(0)));
    return Promise.resolve();
  };
  return { run: runner(session), createWorkbook } as unknown as typeof Excel;
}

export function createHost(library: OSpreadsheet, { namespace = "BATH" }: HostOptions = {}): Host {
  ensureGroupBy();
  prepareLibrary(library);
  registerBatchCommand(library);
  spareNeedlessTableWork(library);
  spareNeedlessCellWork(library);
  listColorsWhenAsked(library);
  registerRound(library);
  registerJoining(library);
  let evaluationDue = false;
  let late: Lateness | undefined;
  const evaluate = (): void => {
    if (!evaluationDue) return;
    evaluationDue = false;
    session.workbook.grid.model.dispatch("EVALUATE_CELLS");
  };
  const book = new FunctionBook(() => {
    if (evaluationDue) return;
    evaluationDue = true;
    queueMicrotask(evaluate);
  });
  const open = (data: object, formats?: FormatSpelling): Workbook =>
    new Workbook(library, data, { [functionBookKey]: book }, formats);
  const session = new Session(open({}), evaluate);
  const customFunctions = {
    associate: (idOrMap: string | Record<string, CustomFunction>, code?: CustomFunction): void => {
      const pairs = typeof idOrMap === "string" ? [[idOrMap, code] as const] : Object.entries(idOrMap);
      for (const [id, one] of pairs) if (one !== undefined) book.associate(id, one);
    },
    Error: CustomFunctionError,
    ErrorCode: errorCodes,
  };
  const office = usualOffice();
  return {
    office,
    Excel: excelNamespace(session),
    Office: makeOffice(() => exportFile(session.workbook.grid.model), office),
    CustomFunctions: customFunctions as unknown as typeof CustomFunctions,
    OfficeExtension: { Error: ExcelError },
    session,
    get workbook() {
      return session.workbook;
    },
    get model() {
      return session.workbook.grid.model;
    },
    loadFunctions: (metadata) => {
      book.describe(metadata);
      registerFunctions(library, namespace, metadata);
    },
    save: () => workbookState(session.workbook),
    restore: (state) => {
      session.workbook = restoreWorkbook(state, library, open);
      session.workbook.answers.answerLate(late);
    },
    tryOut: (state, given) => tryOut(restoreWorkbook(state, library, open), state, given),
    shown: (state) => {
      evaluate();
      return shownValues(session.workbook, state);
    },
    answerLate: (lateness) => {
      late = lateness;
      session.workbook.answers.answerLate(lateness);
    },
    values: (sheetName) => {
      evaluate();
      return valuesOf(session.workbook, sheetName);
    },
  };
}

function valuesOf(workbook: Workbook, sheetName: string): CellValue[][] {
  const sheet = workbook.sheets.named(sheetName);
  if (sheet === undefined) throw new RangeError(`There is no sheet ${sheetName}.`);
  const used: Area = workbook.usedArea(sheet) ?? { sheet, row: 0, column: 0, rows: 0, columns: 0 };
  return Array.from({ length: used.row + used.rows }, (_, row) =>
    Array.from({ length: used.column + used.columns }, (_unused, column) =>
      workbook.cells.value({ sheet, row, column }),
    ),
  );
}
