import { describe, expect, test } from "vitest";

import { fillStart } from "../../../../src/pane/start/start-entry.ts";

const tank = { "tanks.tank": "T1", "tanks.length": "48", "tanks.width": "24", "tanks.fillDepth": "25" };
const start = (typed: Readonly<Record<string, string>>) => fillStart({ ...tank, ...typed }, "US", "2027-03-01");

describe("the form that starts a log", () => {
  test("asks for the inside height too, which later entries are held to, and does without", () => {
    expect(start({ "tanks.height": "30" }).content.rows.tanks).toMatchObject([{ height: 30 }]);
    expect(start({}).content.rows.tanks).toMatchObject([{ height: undefined }]);
    expect(start({}).problems.map(({ key }) => key)).not.toContain("tanks.height");
  });

  test("says where the rim would lie under the fill line", () => {
    expect(start({ "tanks.height": "20" }).findings.map(({ text }) => text)).toContain(
      "The inside height ends below the fill line: measure both from the floor.",
    );
    expect(start({ "tanks.height": "30" }).findings).toHaveLength(1);
  });
});
