import officeAddins from "eslint-plugin-office-addins";
import importSort from "eslint-plugin-simple-import-sort";
import { defineConfig, globalIgnores } from "eslint/config";
import tseslint from "typescript-eslint";

const excelNames = ["Excel", "Office", "OfficeExtension", "CustomFunctions", "OfficeRuntime"];

export default defineConfig(
  globalIgnores(["dist/", "node_modules/", "test-results/", "tests/**/fixtures/"]),
  {
    files: ["**/*.{ts,tsx}"],
    extends: [tseslint.configs.strictTypeChecked],
    plugins: { "import-sort": importSort },
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    rules: {
      "import-sort/imports": "error",
      "no-restricted-globals": [
        "error",
        ...excelNames.map((name) => ({ name, message: "Only src/excel and the stand-in name Excel's objects." })),
      ],
      "no-restricted-exports": ["error", { restrictDefaultExports: { direct: true, named: true, defaultFrom: true } }],
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true }],
    },
  },
  {
    files: ["src/excel/**/*.ts"],
    plugins: { "office-addins": officeAddins },
    rules: {
      ...Object.fromEntries(Object.keys(officeAddins.rules).map((rule) => [`office-addins/${rule}`, "error"])),
      "no-restricted-globals": "off",
    },
  },
  {
    files: ["src/workbench/**/*.ts", "tests/**/*.{ts,tsx}", "scripts/**/*.ts"],
    rules: { "no-restricted-globals": "off" },
  },
  {
    files: ["tests/**/*.test.ts"],
    rules: {
      "no-restricted-syntax": [
        "error",
        {
          selector: "Property[key.name='numRuns']",
          message: "Write runs(60) of tests/setup: a soak runs it more often.",
        },
      ],
    },
  },
  {
    files: ["*.config.ts", "src/pane/**/*.d.ts"],
    rules: { "no-restricted-exports": "off" },
  },
);
