import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    setupFiles: ["tests/setup/random-seeds.ts"],
    include: ["tests/{unit,reference,property,contract,demo-week}/**/*.test.ts"],
    // Many tests build a whole log in the grid, which takes seconds, and more on a busy machine.
    testTimeout: 120_000,
    hookTimeout: 120_000,
    reporters: ["default"],
  },
});
