import { MathFormulaRegular } from "@fluentui/react-icons/svg/math-formula";

import { insertFormula } from "../../excel/log-workbook.ts";
import type { Action } from "../record/action.ts";

/** Writes a formula, not its number, at the selected cell; gives the cell's address. */
export const putInSheet: Action<string, string> = {
  name: "Put in sheet",
  icon: MathFormulaRegular,
  needs: "nothing",
  run: insertFormula,
};
