import type { TestTagDefinition } from "vitest/config";

declare module "vitest" {
  interface TestTags {
    tags: "landing";
  }
}

/** What `npm test -- --landing` runs beside the rest. */
export const landing: TestTagDefinition = {
  name: "landing",
  description:
    "Takes seconds and watches over what seldom breaks alone: a whole log built or upgraded in the grid, Excel stopped at every place, two people at once, the other unit systems, other programs",
};
