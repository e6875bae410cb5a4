import type { SeriesState } from "../../../state/workbook-state.ts";
import { type Area, areaText, sheetPrefix } from "../address.ts";
import type { GridChart } from "../library.ts";
import { areaOf, type Grid } from "./grid/grid.ts";

/** Size of a new chart before it is placed, in pixels. */
const usualSize = { width: 536, height: 335 };

/** An area as the grid's charts name it. */
export function rangeText(grid: Grid, area: Area): string {
  return sheetPrefix(grid.model.getters.getSheetName(area.sheet)) + areaText(area);
}

/** What Excel shows of a series and the grid does not draw. */
export type SeriesNotes = Pick<SeriesState, "dashed" | "markers" | "x">;

/** An x of its own goes where the values go, so it is known by its way from them, or by its place on another sheet. */
type OwnX = { readonly rows: number; readonly columns: number } | { readonly place: Area };

type KeptNotes = Omit<SeriesNotes, "x"> & { readonly x?: OwnX };

/** Charts of the grid: one label range for all series, colours a series, no dashes. */
export class Charts {
  private readonly grid: Grid;
  /** Excel's chart names by the grid's chart id. */
  readonly names = new Map<string, string>();
  /** By the grid's chart id, then by series. */
  private readonly notes = new Map<string, Map<string, KeptNotes>>();

  constructor(grid: Grid) {
    this.grid = grid;
  }

  notesOf(chartId: string): ReadonlyMap<string, SeriesNotes> {
    return new Map(
      [...(this.notes.get(chartId) ?? [])].map(([dataSetId, { x: _way, ...note }]) => {
        const x = this.ownX(chartId, dataSetId);
        return [dataSetId, { ...note, ...(x === undefined ? {} : { x: rangeText(this.grid, x) }) }] as const;
      }),
    );
  }

  noteSeries(chartId: string, dataSetId: string, note: Omit<SeriesNotes, "x">): void {
    this.note(chartId, dataSetId, note);
  }

  private note(chartId: string, dataSetId: string, note: KeptNotes): void {
    const notes = this.notes.get(chartId) ?? new Map<string, KeptNotes>();
    this.notes.set(chartId, notes.set(dataSetId, { ...notes.get(dataSetId), ...note }));
  }

  private valuesOf(chartId: string, dataSetId: string): Area | undefined {
    const { dataSource } = this.definition(chartId);
    const found =
      dataSource.type === "range" ? dataSource.dataSets.find((one) => one.dataSetId === dataSetId) : undefined;
    if (found === undefined) return undefined;
    const range = this.grid.model.getters.getRangeFromSheetXC(this.sheetOf(chartId), found.dataRange);
    return areaOf(range.sheetId, range.zone);
  }

  private ownX(chartId: string, dataSetId: string): Area | undefined {
    const way = this.notes.get(chartId)?.get(dataSetId)?.x;
    if (way === undefined) return undefined;
    if ("place" in way) return way.place;
    const values = this.valuesOf(chartId, dataSetId);
    if (values === undefined) return undefined;
    return { ...values, row: values.row + way.rows, column: values.column + way.columns };
  }

  /** Notes an x of a series' own beside the values that it has now. */
  noteOwnX(chartId: string, dataSetId: string, x: Area): void {
    const values = this.valuesOf(chartId, dataSetId);
    const way = values?.sheet === x.sheet ? { rows: x.row - values.row, columns: x.column - values.column } : undefined;
    this.note(chartId, dataSetId, { x: way ?? { place: x } });
  }

  on(sheet: string): readonly string[] {
    return this.grid.model.getters.getChartIds(sheet);
  }

  /** Makes a chart with one series a column of the source, as Excel guesses. */
  add(sheet: string, type: GridChart["type"], source: Area): string {
    const chartId = this.grid.model.uuidGenerator.smallUuid();
    const columns = Array.from({ length: source.columns }, (_, index): Area => ({
      ...source,
      column: source.column + index,
      columns: 1,
    }));
    const definition = {
      type,
      title: { text: "" },
      dataSource: {
        type: "range",
        dataSets: columns.map((area, index) => ({ dataSetId: String(index), dataRange: rangeText(this.grid, area) })),
        dataSetsHaveTitle: false,
      },
      dataSetStyles: {},
      legendPosition: "bottom",
      labelsAsText: false,
      aggregated: false,
      ...(type === "line" ? { stacked: false, cumulative: false } : {}),
      ...(type === "bar" ? { stacked: false, horizontal: true } : {}),
    } as GridChart;
    this.grid.do("CREATE_CHART", {
      sheetId: sheet,
      chartId,
      figureId: chartId,
      definition,
      offset: { x: 0, y: 0 },
      col: 0,
      row: 0,
      size: usualSize,
    });
    return chartId;
  }

  definition(chartId: string): GridChart {
    return this.grid.model.getters.getChartDefinition(chartId) as GridChart;
  }

  sheetOf(chartId: string): string {
    const sheet = this.grid.model.getters.getSheetIds().find((one) => this.on(one).includes(chartId));
    return sheet ?? this.grid.model.getters.getActiveSheetId();
  }

  update(chartId: string, amend: (definition: GridChart) => GridChart): void {
    const figureId = this.grid.model.getters.getFigureIdFromChartId(chartId);
    this.grid.do("UPDATE_CHART", {
      sheetId: this.sheetOf(chartId),
      chartId,
      figureId,
      definition: amend(this.definition(chartId)),
    });
  }

  remove(chartId: string): void {
    this.grid.do("DELETE_FIGURE", {
      sheetId: this.sheetOf(chartId),
      figureId: this.grid.model.getters.getFigureIdFromChartId(chartId),
    });
    this.names.delete(chartId);
    this.notes.delete(chartId);
  }

  /** Puts the chart over the cells of an area. */
  place(chartId: string, area: Area): void {
    const { getters } = this.grid.model;
    this.grid.makeRoom(area);
    const sum = (count: number, size: (index: number) => number): number =>
      Array.from({ length: count }, (_, index) => size(index)).reduce((a, b) => a + b, 0);
    this.grid.do("UPDATE_FIGURE", {
      sheetId: area.sheet,
      figureId: getters.getFigureIdFromChartId(chartId),
      col: area.column,
      row: area.row,
      offset: { x: 0, y: 0 },
      width: sum(area.columns, (index) => getters.getColSize(area.sheet, area.column + index)),
      height: sum(area.rows, (index) => getters.getRowSize(area.sheet, area.row + index)),
    });
  }

  /**
   * A series' values, and the labels that all series of the grid's chart share: those of the first. A further
   * series with an x of its own stands over the first labels instead.
   */
  setSeries(
    chartId: string,
    dataSetId: string,
    change: { values?: Area; x?: Area; name?: string; color?: string },
  ): void {
    let own = this.ownX(chartId, dataSetId);
    this.update(chartId, (definition) => {
      const { dataSource, dataSetStyles } = definition;
      if (dataSource.type !== "range") return definition;
      const { values } = change;
      const x = change.x === undefined ? undefined : rangeText(this.grid, change.x);
      const ownX = x !== undefined && dataSetId !== dataSource.dataSets[0]?.dataSetId && x !== dataSource.labelRange;
      if (ownX) own = change.x;
      const dataSets = dataSource.dataSets.map((one) =>
        one.dataSetId === dataSetId && values !== undefined ? { ...one, dataRange: rangeText(this.grid, values) } : one,
      );
      const style = {
        ...dataSetStyles[dataSetId],
        ...(change.name === undefined ? {} : { label: change.name }),
        ...(change.color === undefined ? {} : { backgroundColor: change.color }),
      };
      return {
        ...definition,
        dataSource: { ...dataSource, dataSets, ...(x === undefined || ownX ? {} : { labelRange: x }) },
        dataSetStyles: { ...dataSetStyles, [dataSetId]: style },
      };
    });
    if (own !== undefined) this.noteOwnX(chartId, dataSetId, own);
  }

  seriesOf(chartId: string): readonly string[] {
    const { dataSource } = this.definition(chartId);
    return dataSource.type === "range" ? dataSource.dataSets.map(({ dataSetId }) => dataSetId) : [];
  }

  /** All numbers that the chart's series show. */
  numbers(chartId: string): readonly number[] {
    const { dataSource } = this.definition(chartId);
    if (dataSource.type !== "range") return [];
    const { getters } = this.grid.model;
    return dataSource.dataSets
      .flatMap(({ dataRange }) => {
        const { sheetId, zone } = getters.getRangeFromSheetXC(this.sheetOf(chartId), dataRange);
        return getters.getEvaluatedCellsInZone(sheetId, zone);
      })
      .flatMap(({ value }) => (typeof value === "number" ? [value] : []));
  }

  /** A series without values yet: until it gets some it repeats the first one's, as the grid takes no empty range. */
  addSeries(chartId: string, name: string): string {
    const dataSetId = this.grid.model.uuidGenerator.smallUuid();
    this.update(chartId, (definition) => {
      const { dataSource } = definition;
      if (dataSource.type !== "range") return definition;
      const dataRange = dataSource.dataSets[0]?.dataRange ?? "A1";
      const dataSetStyles = { ...definition.dataSetStyles, [dataSetId]: { label: name } };
      return {
        ...definition,
        dataSource: { ...dataSource, dataSets: [...dataSource.dataSets, { dataSetId, dataRange }] },
        dataSetStyles,
      };
    });
    return dataSetId;
  }

  removeSeries(chartId: string, dataSetId: string): void {
    this.notes.get(chartId)?.delete(dataSetId);
    this.update(chartId, (definition) => {
      const { dataSource } = definition;
      if (dataSource.type !== "range") return definition;
      return {
        ...definition,
        dataSource: { ...dataSource, dataSets: dataSource.dataSets.filter((one) => one.dataSetId !== dataSetId) },
      };
    });
  }
}
