const layer = (name, from, allowed) => ({
  name,
  severity: "error",
  comment: `${from} may import only from ${allowed.join(", ")}`,
  from: { path: `^${from}/` },
  to: { path: "^(src|functions|scripts|tests)/", pathNot: allowed.map((folder) => `^${folder}`) },
});

/** Imports run one way; a folder is a permission. */
module.exports = {
  forbidden: [
    { name: "no-circles", severity: "error", from: {}, to: { circular: true } },
    { name: "no-unresolved", severity: "error", from: {}, to: { couldNotResolve: true } },
    layer("core-stands-alone", "src/core", ["src/core/"]),
    layer("functions-see-core", "functions", ["functions/", "src/core/"]),
    layer("joblog-sees-functions-and-core", "src/joblog", ["src/joblog/", "functions/", "src/core/"]),
    layer("advice-sees-joblog-functions-and-core", "src/advice", [
      "src/advice/",
      "src/joblog/",
      "functions/",
      "src/core/",
    ]),
    layer("state-stands-alone", "src/state", ["src/state/"]),
    layer("files-see-joblog-and-state", "src/files", ["src/files/", "src/joblog/", "src/core/", "src/state/"]),
    layer("excel-sees-functions-joblog-and-copies", "src/excel", [
      "src/excel/",
      "functions/",
      "src/joblog/",
      "src/core/",
      "src/files/(hand-off|plain-copy|unpack)\\.",
    ]),
    layer("pane-sees-everything-but-the-hosts", "src/pane", [
      "src/pane/",
      "src/advice/",
      "functions/",
      "src/joblog/",
      "src/core/",
      "src/excel/",
    ]),
    layer("workbench-sees-state-and-files", "src/workbench", ["src/workbench/", "src/state/", "src/files/"]),
    layer("command-line-sees-files-advice-and-below", "src/command-line", [
      "src/command-line/",
      "src/files/",
      "src/advice/",
      "functions/",
      "src/joblog/",
      "src/core/",
      "src/state/",
    ]),
    {
      name: "pure-folders-use-no-package",
      severity: "error",
      from: { path: "^(src/core|src/joblog|src/advice|functions)/" },
      to: { dependencyTypes: ["npm", "npm-dev", "core"] },
    },
    {
      name: "functions-bundle-stays-lean",
      severity: "error",
      comment: "The functions bundle must load in a runtime with no DOM and no Office.js",
      from: { path: "^src/excel/functions/" },
      to: { path: "^src/(pane|advice|joblog)/" },
    },
    {
      name: "reference-text-stays-out-of-definitions",
      severity: "error",
      comment: "Cells and the pane's first view load the definitions and need no formula in print",
      from: { path: "^functions/", pathNot: "\\.reference\\.ts$|^functions/references?(-of)?\\.ts$" },
      to: { path: "\\.reference\\.ts$|^functions/references?(-of)?\\.ts$" },
    },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.json" },
    enhancedResolveOptions: {
      extensions: [".ts", ".tsx", ".js", ".json"],
      exportsFields: ["exports"],
      conditionNames: ["import", "node", "types"],
    },
  },
};
