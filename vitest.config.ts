import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/{unit,reference,property,contract,demo-week}/**/*.test.ts"],
    testTimeout: 30_000,
    reporters: ["default"],
  },
});
