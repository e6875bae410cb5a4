import path from "node:path";

import { type Configuration, rspack } from "@rspack/core";

const root = import.meta.dirname;

/** What the workbench serves beside our bundles: other people's files, unmodified, each with its licence. */
export const vendored: readonly {
  readonly package: string;
  readonly folder: string;
  readonly files: Readonly<Record<string, string>>;
}[] = [
  {
    package: "@odoo/o-spreadsheet",
    folder: "o-spreadsheet",
    files: {
      "dist/o_spreadsheet.min.iife.js": "o_spreadsheet.js",
      "dist/o_spreadsheet.css": "o_spreadsheet.css",
      "dist/o_spreadsheet.xml": "o_spreadsheet.xml",
      LICENSE: "LICENSE.txt",
    },
  },
  { package: "@odoo/owl", folder: "owl", files: { "dist/owl.iife.js": "owl.iife.js", LICENSE: "LICENSE.txt" } },
  {
    package: "chart.js",
    folder: "chart.js",
    files: { "dist/chart.umd.min.js": "chart.umd.min.js", "LICENSE.md": "LICENSE.md" },
  },
  {
    package: "luxon",
    folder: "luxon",
    files: { "build/global/luxon.min.js": "luxon.min.js", "LICENSE.md": "LICENSE.md" },
  },
  {
    package: "chartjs-adapter-luxon",
    folder: "chartjs-adapter-luxon",
    files: { "dist/chartjs-adapter-luxon.umd.min.js": "chartjs-adapter-luxon.umd.min.js", "LICENSE.md": "LICENSE.md" },
  },
  {
    package: "bootstrap",
    folder: "bootstrap",
    files: { "dist/css/bootstrap.min.css": "bootstrap.min.css", LICENSE: "LICENSE.txt" },
  },
  {
    package: "font-awesome",
    folder: "font-awesome",
    files: {
      "css/font-awesome.min.css": "css/font-awesome.min.css",
      "fonts/fontawesome-webfont.woff2": "fonts/fontawesome-webfont.woff2",
      "fonts/fontawesome-webfont.woff": "fonts/fontawesome-webfont.woff",
      "README.md": "README.md",
    },
  },
];

export const vendorFiles = vendored.flatMap((one) =>
  Object.entries(one.files).map(([from, to]) => ({
    from: path.join(root, "node_modules", one.package, from),
    to: `vendor/${one.folder}/${to}`,
    toType: "file" as const,
    info: { minimized: true },
  })),
);

const pages = [
  { from: "src/pane/taskpane.html", to: "taskpane.html" },
  { from: "src/pane/excel-check/excel-check.html", to: "excel-check.html" },
  { from: "src/pane/excel-check/excel-check.css", to: "excel-check.css" },
  { from: "src/workbench/index.html", to: "index.html" },
  { from: "src/workbench/workbench.css", to: "workbench.css" },
  { from: "src/workbench/workbench.webmanifest", to: "workbench.webmanifest" },
  { from: "assets/*.png", to: "[path][name][ext]" },
  { from: "LICENSE", to: "LICENSE.txt", toType: "file" as const },
];

const hash = "[contenthash:8]";

type Mode = "production" | "development";

function common(mode: Mode, entry: Record<string, string>): Configuration {
  return {
    mode,
    context: root,
    target: ["web", "es2022"],
    devtool: mode === "development" ? "source-map" : false,
    entry,
    // What loads later has its contents in its name: a cached page of one version can load no part of another.
    output: { path: path.join(root, "dist"), filename: "[name].js", chunkFilename: `[name].${hash}.js` },
    resolve: { extensions: [".ts", ".tsx", ".js"] },
    module: {
      rules: [
        {
          test: /\.tsx?$/,
          loader: "builtin:swc-loader",
          options: {
            jsc: {
              parser: { syntax: "typescript", tsx: true },
              target: "es2022",
              transform: { react: { runtime: "automatic" } },
            },
          },
        },
        // Views that come later would reach past Fluent's index to each of its modules, and none of those could be
        // merged any more: 86 kB of wrappers when it was measured.
        { test: /@fluentui[\\/]react-components[\\/]lib[\\/]index\.js$/, sideEffects: true },
      ],
    },
    optimization: {
      minimizer: [new rspack.SwcJsMinimizerRspackPlugin({ extractComments: true })],
      splitChunks: {
        chunks: "async",
        cacheGroups: { default: false, defaultVendors: false, shared: { name: "pane-shared", minChunks: 2 } },
      },
      runtimeChunk: false,
    },
    performance: { hints: false },
  };
}

const functionsFolder = path.join(root, "functions");
const functionsView = path.join(root, "src", "pane", "functions");
const loaderOf = (name: string): string => path.join(root, "scripts", "build", name);

/** The bundle of the worksheet functions; it shares no module instance with the pane. */
export function functionsBundle(mode: Mode): Configuration {
  const bundle = common(mode, { functions: "./src/excel/functions/functions-entry.ts" });
  const texts = {
    test: /\.ts$/,
    include: functionsFolder,
    enforce: "pre" as const,
    loader: loaderOf("drop-help.js"),
  };
  return { ...bundle, module: { rules: [texts, ...(bundle.module?.rules ?? [])] } };
}

/**
 * The view that lists the functions shows what they say to readers and has definitions of its own for that; the rest of
 * the pane calls them alone, and its start would wait for 7 kB of text.
 */
const definitions = [
  { resourceQuery: /help/, loader: loaderOf("keep-help.js") },
  { issuer: functionsView, resourceQuery: { not: /help/ }, loader: loaderOf("keep-help.js") },
  { issuer: { not: functionsView }, resourceQuery: { not: /help/ }, loader: loaderOf("drop-help.js") },
].map((rule) => ({ ...rule, test: /\.ts$/, include: functionsFolder, enforce: "pre" as const }));

/** The add-in's pane and the files beside the bundles.
 * What several of the pane's later views need comes once, with the first of them. */
export function addInBundles(mode: Mode): Configuration {
  const entry = {
    taskpane: "./src/pane/entry.tsx",
    "office-stand-in": "./src/workbench/stand-in-entry.ts",
    "service-worker": "./src/workbench/service-worker.ts",
  };
  const bundles = common(mode, entry);
  return {
    ...bundles,
    module: { rules: [...definitions, ...(bundles.module?.rules ?? [])] },
    plugins: [new rspack.CopyRspackPlugin({ patterns: [...pages, ...vendorFiles] })],
  };
}

/** The page that asks Excel what the add-in relies on. Bundled by itself: modules that two entries share are merged into neither. */
export function checkBundle(mode: Mode): Configuration {
  const bundle = common(mode, { "excel-check": "./src/pane/excel-check/entry.tsx" });
  return { ...bundle, output: { ...bundle.output, chunkFilename: `excel-check-[name].${hash}.js` } };
}

/** The workbench's page. Bundled by itself, so that what it loads later shares nothing with the pane's later views. */
export function workbenchBundle(mode: Mode): Configuration {
  const bundle = common(mode, { workbench: "./src/workbench/entry.ts" });
  return { ...bundle, output: { ...bundle.output, chunkFilename: `workbench-[name].${hash}.js` } };
}

/** What a page loads only when a file is opened: a worker by itself, so that the add-in's bundles share nothing with it. */
export function readerBundle(mode: Mode): Configuration {
  return common(mode, { "read-workbook": "./src/files/read/read-worker.ts" });
}

/** The same for a copy that is saved. */
export function writerBundle(mode: Mode): Configuration {
  return common(mode, { "write-workbook": "./src/files/write/write-worker.ts" });
}

/** The program `bathsheet`, one file for Node that needs no package beside it. */
export function commandLineBundle(): Configuration {
  const bundle = common("production", { bathsheet: "./src/command-line/entry.ts" });
  return {
    ...bundle,
    target: ["node20.19", "es2022"],
    output: {
      path: path.join(root, "bin"),
      filename: "[name].js",
      module: true,
      chunkFormat: "module",
      library: { type: "module" },
    },
    optimization: {
      ...bundle.optimization,
      splitChunks: false,
      minimizer: [new rspack.SwcJsMinimizerRspackPlugin({ extractComments: false })],
    },
    plugins: [
      new rspack.optimize.LimitChunkCountPlugin({ maxChunks: 1 }),
      new rspack.BannerPlugin({ banner: "#!/usr/bin/env node", raw: true }),
    ],
  };
}
