import path from "node:path";
import CopyPlugin from "copy-webpack-plugin";
import webpack from "webpack";

const root = import.meta.dirname;
const fromModule = (file: string): string => path.join(root, "node_modules", file);

/** The grid and what it needs, served as their own unmodified files with their licences. */
const vendorFiles = [
  { from: fromModule("@odoo/o-spreadsheet/dist/o_spreadsheet.min.iife.js"), to: "vendor/o-spreadsheet/o_spreadsheet.js" },
  { from: fromModule("@odoo/o-spreadsheet/dist/o_spreadsheet.css"), to: "vendor/o-spreadsheet/" },
  { from: fromModule("@odoo/o-spreadsheet/dist/o_spreadsheet.xml"), to: "vendor/o-spreadsheet/" },
  { from: fromModule("@odoo/o-spreadsheet/LICENSE"), to: "vendor/o-spreadsheet/" },
];

const pages = [
  { from: "src/pane/taskpane.html", to: "taskpane.html" },
  { from: "src/workbench/index.html", to: "index.html" },
  { from: "assets/*.png", to: "[path][name][ext]" },
  { from: "LICENSE", to: "LICENSE.txt", toType: "file" as const },
];

/** The bundles of the add-in and of the workbench. `functions.js` shares no module instance with the pane. */
export function configuration(mode: "production" | "development"): webpack.Configuration {
  return {
    mode,
    context: root,
    target: ["web", "es2022"],
    devtool: mode === "development" ? "source-map" : false,
    entry: {
      functions: "./src/excel/functions-entry.ts",
      taskpane: "./src/pane/entry.tsx",
      workbench: "./src/workbench/entry.ts",
      "office-stand-in": "./src/workbench/stand-in-entry.ts",
      "service-worker": "./src/workbench/service-worker.ts",
    },
    output: { path: path.join(root, "dist"), filename: "[name].js", clean: true },
    resolve: { extensions: [".ts", ".tsx", ".js"] },
    module: {
      rules: [
        { test: /\.tsx?$/, loader: "esbuild-loader", options: { target: "es2022", jsx: "automatic" } },
        { test: /\.css$/, type: "asset/source" },
      ],
    },
    optimization: { splitChunks: false, runtimeChunk: false },
    performance: { hints: false },
    plugins: [new CopyPlugin({ patterns: [...pages, ...vendorFiles] })],
  };
}
