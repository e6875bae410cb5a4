import { writeWorkbook } from "../../src/files/xlsx-writer.ts";
import { openHeadlessGrid } from "../build/headless-log.ts";
import { layOutTour } from "./lay-out-tour.ts";
import { workOutPlan } from "./work-out-plan.ts";

export const tourFile = "function-tour.xlsx";

/** The function tour as an .xlsx file with the values that the built functions answer. */
export async function tourWorkbook(functionsScript: string): Promise<Uint8Array> {
  const plan = layOutTour();
  return writeWorkbook(plan, await workOutPlan(openHeadlessGrid(functionsScript), plan));
}
