import type { Workbook } from "../../workbook/workbook.ts";
import { ClientObject } from "../requests/client-object.ts";
import type { Requests } from "../requests/requests.ts";

class FunctionAnswer
  extends ClientObject<Workbook, Excel.FunctionResult<number>>
  implements Pick<Excel.FunctionResult<number>, "value">
{
  protected readonly scalars = ["value"];
  private readonly answer: (workbook: Workbook) => number;

  constructor(requests: Requests, answer: (workbook: Workbook) => number) {
    super(requests, "FunctionResult", { what: "answer", find: (workbook) => workbook });
    this.answer = answer;
  }

  protected fetch(_property: string, _target: Workbook, workbook: Workbook): unknown {
    return this.answer(workbook);
  }

  get value(): number {
    return this.loadedValue("value") as number;
  }
}

/** Day 0 of Excel's usual count, as JavaScript counts milliseconds. */
const dayZero = Date.UTC(1899, 11, 30);

const millisecondsPerDay = 86_400_000;

/** Days by which the count from 1904 is behind. */
const behind = 1462;

/** What Excel calculates for an add-in without a cell. DATE alone. */
export class SheetFunctionsObject
  extends ClientObject<Workbook, Excel.Functions>
  implements Pick<Excel.Functions, "date">
{
  protected readonly scalars: readonly string[] = [];

  constructor(requests: Requests) {
    super(requests, "Functions", { what: "functions", find: (workbook) => workbook });
  }

  protected fetch(): unknown {
    return undefined;
  }

  date(...given: Parameters<Excel.Functions["date"]>): Excel.FunctionResult<number> {
    const [year, month, day] = given.map(Number);
    return new FunctionAnswer(
      this.requests,
      ({ datesFrom1904 }) =>
        (Date.UTC(year ?? 0, (month ?? 1) - 1, day ?? 1) - dayZero) / millisecondsPerDay - (datesFrom1904 ? behind : 0),
    ).face;
  }
}
