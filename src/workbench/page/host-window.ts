import type { Host } from "../host/create-host.ts";

/** The workbench's page as the pane's frame sees it. */
export type HostWindow = Window & {
  bathsheetHost?: Pick<Host, "Excel" | "Office" | "CustomFunctions" | "OfficeExtension">;
};
