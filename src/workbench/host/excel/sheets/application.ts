import type { Workbook } from "../../workbook/workbook.ts";
import { ClientObject } from "../requests/client-object.ts";
import type { Requests } from "../requests/requests.ts";

/** The grid calculates and draws once a batch whatever is asked; so suspending is free. */
export class ApplicationObject
  extends ClientObject<Workbook, Excel.Application>
  implements
    Pick<
      Excel.Application,
      "suspendApiCalculationUntilNextSync" | "suspendScreenUpdatingUntilNextSync" | "calculate" | "calculationState"
    >
{
  protected readonly scalars = ["calculationState"];

  constructor(requests: Requests) {
    super(requests, "Application", { what: "application", find: (workbook) => workbook });
  }

  get calculationState(): Excel.CalculationState {
    return this.loadedValue("calculationState") as Excel.CalculationState;
  }

  protected fetch(_property: string, { answers }: Workbook): unknown {
    return answers.areComplete ? "Done" : "Calculating";
  }

  suspendApiCalculationUntilNextSync(): void {
    this.change("suspendApiCalculationUntilNextSync", () => undefined);
  }

  suspendScreenUpdatingUntilNextSync(): void {
    this.change("suspendScreenUpdatingUntilNextSync", () => undefined);
  }

  calculate(): void {
    this.change("calculate", () => undefined);
    this.requests.enqueue("read", "Application.calculate", () => {
      this.requests.workbookNow.grid.do("EVALUATE_CELLS");
    });
  }
}
