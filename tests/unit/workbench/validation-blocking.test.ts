import { expect, it } from "vitest";

import { salesHost } from "./test-host.ts";

it("a limit refuses an entry, a formula of one's own only marks the cell", async () => {
  const host = await salesHost();
  await host.Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem("Sheet1");
    const rules: readonly [string, Excel.DataValidationRule][] = [
      ["A2:A4", { custom: { formula: "=LEN(A2)<3" } }],
      ["C2:C4", { decimal: { formula1: 0, formula2: 1, operator: "Between" } }],
    ];
    for (const [address, rule] of rules) {
      const { dataValidation } = sheet.getRange(address);
      dataValidation.rule = rule;
      dataValidation.errorAlert = { showAlert: true, style: "Stop", title: "Check", message: "Not so." };
    }
    sheet.getRange("A2:A3").values = [["Robert"], ["Al"]];
    await context.sync();
  });
  const { getters } = host.model;
  const at = (row: number, col: number) => ({ sheetId: getters.getActiveSheetId(), row, col });
  expect(getters.getValidationRuleForCell(at(1, 2))?.isBlocking).toBe(true);
  expect(getters.getValidationRuleForCell(at(1, 0))?.isBlocking ?? false).toBe(false);
  expect([1, 2].map((row) => getters.isDataValidationInvalid(at(row, 0)))).toEqual([true, false]);
});
