/**
 * Answers as office.js inside the pane's frame: hands over the objects of the workbench's host, which
 * lives in the page around it.
 */
import type { HostWindow } from "./page/host-window.ts";

const host = (window.parent as HostWindow).bathsheetHost;
if (host === undefined) throw new Error("The pane was opened outside the workbench.");

Object.assign(window, {
  Excel: host.Excel,
  Office: host.Office,
  CustomFunctions: host.CustomFunctions,
  OfficeExtension: host.OfficeExtension,
});
