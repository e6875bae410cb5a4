import { describe, expect, it } from "vitest";

import { tabByKey } from "../../../../src/pane/frame/view-tabs.tsx";

describe("the keys of the pane's tab list", () => {
  it.each([
    ["ArrowRight", 2, 3],
    ["ArrowRight", 3, 0],
    ["ArrowLeft", 2, 1],
    ["ArrowLeft", 0, 3],
    ["Home", 2, 0],
    ["End", 1, 3],
    ["ArrowDown", 1, undefined],
    ["Enter", 1, undefined],
    [" ", 1, undefined],
  ])("%s from tab %i of 4 leads to %s", (key, at, to) => {
    expect(tabByKey(key, at, 4)).toBe(to);
  });
});
