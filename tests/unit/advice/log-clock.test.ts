import { describe, expect, it } from "vitest";

import { presentOf } from "../../../src/advice/log-clock.ts";
import { demoLog } from "../excel/log/demo-log.ts";

describe("the present moment of a log", () => {
  it("is the computer's clock where the entries lie behind it", async () => {
    expect(presentOf(await demoLog("2027-03-02T17:00"), "2027-03-04T08:50")).toBe("2027-03-04T08:50");
  });

  it("is ten minutes after the latest entry where the whole log lies ahead", async () => {
    // The invented days' last reading before noon of their second day.
    expect(presentOf(await demoLog("2027-03-02T12:00"), "2026-11-25T09:00")).toBe("2027-03-02T11:40");
  });

  it("is the computer's clock where only the next hours are ahead, so that a slip of the pen is still refused", async () => {
    expect(presentOf(await demoLog("2027-03-02T12:00"), "2027-03-02T10:00")).toBe("2027-03-02T10:00");
  });
});
