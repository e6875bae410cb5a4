/** Registers every worksheet function while the script loads, before Office reports ready. */
import { catalogue } from "../../../functions/catalogue.ts";
import { answerCell } from "./cell-boundary.ts";

for (const fn of catalogue) {
  CustomFunctions.associate(fn.id, (...received: readonly unknown[]) => answerCell(fn, received));
}
