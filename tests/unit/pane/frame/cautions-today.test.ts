import { expect, it } from "vitest";

import { cautionsOn } from "../../../../src/pane/frame/cautions-today.ts";

it("folds a step's cautions from the second time on, each day anew, and no other step's", () => {
  let kept: unknown;
  let day = "2027-03-04";
  const device = {
    read: () => kept,
    write: (value: unknown) => {
      kept = value;
    },
  };
  const cautions = cautionsOn(device, () => day);
  expect(cautions.wereShown("reading")).toBe(false);
  cautions.note("reading");
  expect([cautions.wereShown("reading"), cautions.wereShown("charge")]).toEqual([true, false]);
  day = "2027-03-05";
  expect(cautions.wereShown("reading")).toBe(false);
  cautions.note("reading");
  expect(kept).toEqual(["2027-03-05 reading"]);
});

it.each([["text"], [{ reading: true }], [null]])("takes a storage that holds %j for an empty one", (kept) => {
  expect(cautionsOn({ read: () => kept, write: () => undefined }, () => "2027-03-04").wereShown("reading")).toBe(false);
});
