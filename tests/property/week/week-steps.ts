import fc from "fast-check";

import { bathIds } from "../../../src/advice/bath-values.ts";
import type { LogContext } from "../../../src/advice/log-context.ts";
import { nextStep } from "../../../src/advice/next-step/next-step.ts";
import { serialOf } from "../../../src/advice/wording/moments.ts";
import { editLog, readLog, takeBack } from "../../../src/excel/log-workbook.ts";
import { LogProblem } from "../../../src/excel/office-problems.ts";
import type { Receipt } from "../../../src/excel/record/receipt.ts";
import type { LogSnapshot } from "../../../src/joblog/model/log-snapshot.ts";
import { shareResult } from "../../../src/pane/claims/share-result.ts";
import { type EntryId, formOf, forms } from "../../../src/pane/record/forms.ts";
import { nextIds } from "../../../src/pane/record/next-id.ts";
import type { Host } from "../../../src/workbench/host/create-host.ts";
import { beforeTrip, deleteRowOf, insertSheetRowAbove, swapRows, typeAt } from "../../unit/excel/log/in-between.ts";
import { randomDraft } from "./random-draft.ts";
import { doubleNumbers, listed, type TypedRows, typedRows, withReceipt } from "./typed-rows.ts";

/** What another person does to Readings between the pane's read and its write. */
const rivals = ["nobody", "adds a reading", "deletes a reading", "sorts", "inserts a row above"] as const;

/** One thing that happens; a list of them is a week that can be pasted into a test. */
export type WeekStep =
  | { readonly does: "record"; readonly form: EntryId; readonly seed: number; readonly rival: (typeof rivals)[number] }
  | { readonly does: "break off"; readonly form: EntryId; readonly seed: number; readonly part: number }
  | { readonly does: "take back" }
  | { readonly does: "paste"; readonly row: number; readonly column: number; readonly text: string };

const seed = fc.nat(1_000_000);
const form = fc.constantFrom(...forms.map(({ id }) => id));
const reading = fc.constantFrom<EntryId>("reading", "reading", "correction", "baseline", "addition");

export const anyWeekStep: fc.Arbitrary<WeekStep> = fc.oneof(
  { weight: 5, arbitrary: fc.record({ does: fc.constant("record"), form, seed, rival: fc.constant("nobody") }) },
  {
    weight: 3,
    arbitrary: fc.record({ does: fc.constant("record"), form: reading, seed, rival: fc.constantFrom(...rivals) }),
  },
  { weight: 2, arbitrary: fc.record({ does: fc.constant("break off"), form, seed, part: fc.nat(9) }) },
  { weight: 3, arbitrary: fc.record({ does: fc.constant("take back") }) },
  {
    weight: 1,
    arbitrary: fc.record({
      does: fc.constant("paste"),
      row: fc.nat(9),
      column: fc.nat(7),
      text: fc.constantFrom("", "0", "-5", "abc", "11,4", "TRUE"),
    }),
  },
) as fc.Arbitrary<WeekStep>;

const present = "2027-03-02T17:00";

function fail(what: string): never {
  throw new Error(what);
}

function same(what: string, found: TypedRows, wanted: TypedRows): void {
  const [is, shall] = [listed(found), listed(wanted)];
  const more = is.filter((row) => !shall.includes(row));
  const less = shall.filter((row) => !is.includes(row));
  if (is.length !== shall.length || more.length > 0 || less.length > 0)
    fail(
      `${what}: too many ${more.join(" | ")}; missing ${less.join(" | ")}; ${String(is.length)} of ${String(shall.length)}`,
    );
}

/** Words of a machine; what a person typed stands in quotation marks or not at all. */
function checkWords(texts: readonly string[], where: string): void {
  for (const text of texts)
    if (/undefined|\bNaN\b|\[object|Infinity/.test(text) || (/above the trigger/.test(text) && /: -\d/.test(text)))
      fail(`${where}: ${text}`);
}

/** A bath is called placed only where its shares add up to what there is to share. */
function checkShares(log: LogSnapshot, bath: string): void {
  const result = shareResult(log, bath);
  if (result === undefined) return;
  checkWords(
    result.findings.map(({ text }) => text),
    `shares of ${bath}`,
  );
  const shares = result.shares.map(({ share }) => share);
  const sum = shares.reduce<number>((total, share) => total + (share ?? 0), 0);
  const pool = result.sums.find(([name]) => name === "To share out")?.[1] ?? NaN;
  const borne = result.findings.some(({ tone }) => tone === "good");
  if (borne && (shares.includes(undefined) || Math.abs(sum - pool) > 0.005))
    fail(`called borne: ${JSON.stringify(result)}`);
}

/** What must hold of any log, whatever was typed into it. */
function checkLog(log: LogSnapshot): void {
  for (const { cells } of log.rows.baths) {
    const bath = String(cells.bath ?? "");
    if (bath === "") continue;
    const { sentence, reason = "", overdue } = nextStep(log, bath, "US", serialOf(present) ?? 0);
    checkWords([sentence, reason, ...overdue.map(({ text }) => text)], `Now of ${bath}`);
  }
  for (const bath of bathIds(log)) checkShares(log, bath);
  const { costTotal, costToClaims, costToShop, costNotPlaced } = log.fields;
  const parts = [costToClaims, costToShop, costNotPlaced];
  if (typeof costTotal !== "number" || parts.some((part) => typeof part !== "number")) return;
  const placed = parts.reduce<number>((sum, part) => sum + Number(part), 0);
  if (Math.abs(costTotal - placed) > 0.005) fail(`cost ${String(costTotal)}, claims, shop and open ${parts.join()}`);
}

/** A week in progress: the workbook, and what can be taken back. */
export class Week {
  private readonly host: Host;
  private last: { readonly receipt: Receipt; readonly before: TypedRows } | undefined;
  /** Cells were typed past the pane: numbers may stand twice from then on. */
  private byHand = false;
  /** What happened, for the count of a long run. */
  readonly told: string[] = [];

  constructor(host: Host) {
    this.host = host;
  }

  private async log(): Promise<LogSnapshot> {
    return (await readLog()) ?? fail("there is no log");
  }

  private context(log: LogSnapshot): LogContext {
    return { log, system: "US", bath: String(log.rows.baths[0]?.cells.bath ?? ""), now: present };
  }

  /** Its act on the workbook, and what typed rows it leaves of those that were there. */
  private rival(
    rival: (typeof rivals)[number],
    log: LogSnapshot,
  ): { readonly act: () => void; readonly leaves: TypedRows } {
    const rows = typedRows(log);
    const readings = rows.get("readings") ?? [];
    const ends = log.rows.readings.at(-1)?.position ?? -1;
    const width = this.host.workbook.tables.named("Readings")?.headers.length ?? 0;
    const [id = ""] = nextIds(log, "readings", 1);
    const others = new Map(rows);
    switch (rival) {
      case "adds a reading":
        others.set("readings", [...readings, { id }]);
        return {
          act: () => {
            typeAt(this.host, "Readings", ends + 1, 0, id);
          },
          leaves: others,
        };
      case "deletes a reading":
        others.set("readings", readings.slice(1));
        return readings.length < 3 || log.rows.readings[0]?.position !== 0
          ? { act: () => undefined, leaves: rows }
          : {
              act: () => {
                deleteRowOf(this.host, "Readings", 0);
              },
              leaves: others,
            };
      case "sorts":
        return ends < 2
          ? { act: () => undefined, leaves: rows }
          : {
              act: () => {
                swapRows(this.host, "Readings", 0, 1, width);
              },
              leaves: rows,
            };
      case "inserts a row above":
        return {
          act: () => {
            insertSheetRowAbove(this.host, "Readings");
          },
          leaves: rows,
        };
      case "nobody":
        return { act: () => undefined, leaves: rows };
    }
  }

  private async record({ form: id, seed: of, rival }: Extract<WeekStep, { does: "record" }>): Promise<string> {
    const log = await this.log();
    const { meaning, problems } = randomDraft(formOf(id), this.context(log), of);
    const { rows, fills = [], changes = [] } = meaning;
    const writes = rows.length + fills.length + changes.length > 0;
    if (problems.length > 0 || meaning.blocked !== undefined) {
      if (writes) fail(`${id} is refused and writes all the same`);
      return `${id} refused by the form`;
    }
    const { act, leaves } = this.rival(rival, log);
    const stop = beforeTrip(this.host, 2, act);
    let receipt: Receipt;
    try {
      receipt = await editLog(meaning);
    } catch (error) {
      if (!(error instanceof LogProblem)) throw error;
      checkWords([error.message], id);
      stop();
      same(`${id} refused while somebody ${rival}`, typedRows(await this.log()), leaves);
      return `${id} refused at the write`;
    } finally {
      stop();
    }
    const after = typedRows(await this.log());
    same(`${id} recorded while somebody ${rival}`, after, withReceipt(leaves, receipt));
    if (!this.byHand && doubleNumbers(after).length > 0) fail(`double numbers ${doubleNumbers(after).join()}`);
    this.last = { receipt, before: leaves };
    return `${id} recorded`;
  }

  /** Excel stops within the batch that writes: nothing of the entry stays. */
  private async breakOff({ form: id, seed: of, part }: Extract<WeekStep, { does: "break off" }>): Promise<string> {
    const log = await this.log();
    const { meaning, problems } = randomDraft(formOf(id), this.context(log), of);
    if (problems.length > 0 || meaning.blocked !== undefined) return `${id} refused by the form`;
    const { session } = this.host;
    const execute = session.execute.bind(session);
    let trip = 0;
    session.execute = (steps) => {
      if (steps.length > 0) trip += 1;
      if (steps.length === 0 || trip !== 2) {
        execute(steps);
        return;
      }
      execute(steps.slice(0, Math.floor((steps.length * (part + 1)) / 11)));
      throw Object.assign(new Error("The request failed."), { code: "GeneralException" });
    };
    try {
      await editLog(meaning);
      fail("a batch that failed was called recorded");
    } catch (error) {
      if (!(error instanceof LogProblem)) throw error;
    } finally {
      session.execute = execute;
    }
    same(`${id} broken off`, typedRows(await this.log()), typedRows(log));
    return `${id} broken off`;
  }

  private async takeBack(): Promise<string> {
    if (this.last === undefined) return "nothing to take back";
    const { receipt, before } = this.last;
    this.last = undefined;
    await takeBack(receipt);
    same("taken back", typedRows(await this.log()), before);
    return "taken back";
  }

  async go(step: WeekStep): Promise<void> {
    switch (step.does) {
      case "record":
        this.told.push(await this.record(step));
        break;
      case "break off":
        this.told.push(await this.breakOff(step));
        break;
      case "take back":
        this.told.push(await this.takeBack());
        break;
      case "paste":
        this.byHand = true;
        this.last = undefined;
        typeAt(this.host, "Readings", step.row, step.column, step.text);
        this.told.push("pasted");
        break;
    }
    checkLog(await this.log());
  }
}
