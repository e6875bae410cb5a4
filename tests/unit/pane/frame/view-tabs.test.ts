import { describe, expect, it } from "vitest";

import { tabByKey } from "../../../../src/pane/frame/view-tabs.tsx";

describe("the keys of the pane's tab list", () => {
  it.each([
    ["ArrowRight", 2, 3],
    ["ArrowRight", 5, 0],
    ["ArrowLeft", 2, 1],
    ["ArrowLeft", 0, 5],
    ["Home", 4, 0],
    ["End", 1, 5],
    ["ArrowDown", 1, undefined],
    ["Enter", 1, undefined],
    [" ", 1, undefined],
  ])("%s from tab %i of 6 leads to %s", (key, at, to) => {
    expect(tabByKey(key, at, 6)).toBe(to);
  });
});
