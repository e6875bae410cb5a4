import type { CellPosition } from "../library.ts";
import { type Grid, zoneOf } from "./grid/grid.ts";

/** Key under which a workbook's evaluation finds its answers. */
export const answersKey = "bathsheetAnswers";

/** What a cell can show until its function has answered: Excel's builds differ, and one build by its mood. */
const stopgaps = ["#BUSY!", "former value", "0"] as const;
type Stopgap = (typeof stopgaps)[number];

type Shown = string | number | boolean;

/** How the add-in's functions answer; without one they answer at once. */
export interface Lateness {
  readonly until: Stopgap | "any of them";
  /** Orders the answers, and picks a stopgap for each cell where any will do. */
  readonly seed: number;
  /** Milliseconds to the last answer; left out, answers come by `answerSome` and `answerAll`. */
  readonly within?: number;
}

type Listener = (sheets: readonly string[]) => void;

/** The part of the grid's evaluation that its types keep private. */
interface Evaluator {
  getCellsDependingOn(ranges: Iterable<SheetZone>): Iterable<SheetZone>;
}

interface SheetZone {
  readonly sheetId: string;
  readonly zone: ReturnType<typeof zoneOf>;
}

/** Answers come in about so many turns. */
const turns = 3;

/** Numbers from 0 to 1 that look random and are the same for the same seed (the generator is known as mulberry32). */
function randomFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/**
 * When the add-in's functions answer. The grid always has the true value; until a cell's function has answered, the cell
 * and all that depend on it hand over a stopgap in its place.
 */
export class Answers {
  private grid: Grid | undefined;
  private lateness: Lateness | undefined;
  private random: () => number = () => 0;
  private called: CellPosition[] = [];
  private readonly calledOn = new Set<string>();
  /** Ids of cells whose function has not answered. */
  private readonly unanswered = new Set<number>();
  private readonly hidden = new Map<number, Stopgap>();
  /** What cells with formulas showed before. */
  private readonly former = new Map<number, Shown>();
  private readonly listeners = new Set<Listener>();
  private readonly waiting = new Set<() => void>();
  private timer: ReturnType<typeof setTimeout> | undefined;
  private trueValue: (position: CellPosition) => Shown = () => "";

  attach(grid: Grid, trueValue: (position: CellPosition) => Shown): void {
    this.grid = grid;
    this.trueValue = trueValue;
    grid.model.on("update", this, () => {
      this.afterEvaluation();
    });
  }

  /** From now on functions answer this way; what waits is answered. */
  answerLate(lateness: Lateness | undefined): void {
    this.called = [];
    this.answerAll();
    this.lateness = lateness;
    if (lateness === undefined) return;
    this.random = randomFrom(lateness.seed);
    this.remember();
  }

  /** Told by every function that runs, with the cell that it runs in. */
  ran(position: CellPosition | undefined): void {
    if (position === undefined) return;
    this.calledOn.add(position.sheetId);
    if (this.lateness !== undefined) this.called.push(position);
  }

  /** What a cell shows in place of its value; undefined where it is worked out. */
  stopgap(position: CellPosition): Shown | undefined {
    if (this.hidden.size === 0) return undefined;
    const id = this.grid?.model.getters.getCell(position)?.id;
    const stopgap = id === undefined ? undefined : this.hidden.get(id);
    if (id === undefined || stopgap === undefined) return undefined;
    if (stopgap === "0") return 0;
    return stopgap === "former value" ? (this.former.get(id) ?? "#BUSY!") : stopgap;
  }

  get areComplete(): boolean {
    return this.unanswered.size === 0;
  }

  /** Resolves once every function has answered. */
  complete(): Promise<void> {
    if (this.areComplete) return Promise.resolve();
    return new Promise((resolve) => this.waiting.add(resolve));
  }

  onCalculated(listener: Listener): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  /** Some functions answer, in no order. */
  answerSome(): void {
    for (const id of [...this.unanswered]) if (this.random() < 1 / 2) this.unanswered.delete(id);
    this.show();
  }

  answerAll(): void {
    this.unanswered.clear();
    this.show();
  }

  private afterEvaluation(): void {
    if (this.calledOn.size === 0) return;
    const { grid, lateness } = this;
    if (grid === undefined) return;
    const { getters } = grid.model;
    for (const position of this.called) {
      const id = getters.getCell(position)?.id;
      if (id !== undefined) this.unanswered.add(id);
    }
    this.called = [];
    if (lateness === undefined) {
      this.tell();
      return;
    }
    this.hide();
    this.remember();
    if (lateness.within !== undefined) this.answerIn(lateness.within / turns, turns);
  }

  private answerIn(pause: number, left: number): void {
    clearTimeout(this.timer);
    this.timer = setTimeout(() => {
      if (left <= 1) this.answerAll();
      else {
        this.answerSome();
        this.answerIn(pause, left - 1);
      }
    }, pause);
  }

  /** Cells that wait for an answer, their own or another cell's, and no others. */
  private hide(): void {
    const ids = this.waitingCells();
    for (const id of [...this.hidden.keys()]) if (!ids.has(id)) this.hidden.delete(id);
    for (const id of ids) if (!this.hidden.has(id)) this.hidden.set(id, this.pick());
  }

  private show(): void {
    if (this.hidden.size === 0) return;
    this.hide();
    this.remember();
    this.tell();
    if (!this.areComplete) return;
    for (const resolve of this.waiting) resolve();
    this.waiting.clear();
  }

  private pick(): Stopgap {
    const until = this.lateness?.until ?? "#BUSY!";
    if (until !== "any of them") return until;
    return stopgaps[Math.floor(this.random() * stopgaps.length)] ?? "#BUSY!";
  }

  private waitingCells(): ReadonlySet<number> {
    const ids = new Set<number>();
    if (this.grid === undefined || this.unanswered.size === 0) return ids;
    const { getters } = this.grid.model;
    const own: SheetZone[] = [];
    for (const id of this.unanswered) {
      const position = this.positionOf(id);
      if (position === undefined) this.unanswered.delete(id);
      else {
        ids.add(id);
        const { sheetId, row, col } = position;
        own.push({ sheetId, zone: { top: row, bottom: row, left: col, right: col } });
      }
    }
    for (const { sheetId, zone } of this.evaluator().getCellsDependingOn(own))
      for (let row = zone.top; row <= zone.bottom; row += 1)
        for (let col = zone.left; col <= zone.right; col += 1) {
          const id = getters.getCell({ sheetId, row, col })?.id;
          if (id !== undefined) ids.add(id);
        }
    return ids;
  }

  private positionOf(id: number): CellPosition | undefined {
    try {
      return this.grid?.model.getters.getCellPosition(id);
    } catch {
      // The grid throws for a cell that was deleted; then nobody waits for it.
      return undefined;
    }
  }

  private evaluator(): Evaluator {
    const { handlers } = this.grid?.model as unknown as { readonly handlers: readonly { evaluator?: Evaluator }[] };
    const found = handlers.find(({ evaluator }) => evaluator !== undefined)?.evaluator;
    if (found === undefined) throw new Error("The grid has no evaluator.");
    return found;
  }

  private remember(): void {
    if (this.grid === undefined) return;
    const { getters } = this.grid.model;
    for (const sheet of getters.getSheetIds())
      for (const cell of getters.getCells(sheet))
        if (cell.isFormula && !this.hidden.has(cell.id))
          this.former.set(cell.id, this.trueValue(getters.getCellPosition(cell.id)));
  }

  private tell(): void {
    const sheets = [...this.calledOn];
    if (this.areComplete) this.calledOn.clear();
    for (const listener of this.listeners) listener(sheets);
  }
}
