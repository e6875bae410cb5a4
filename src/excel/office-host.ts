/** The program that hosts the pane: ready or not, light or dark. */

export type HostShade = "light" | "dark";

/** Resolves once Office.js has found its host. */
export async function whenHostReady(): Promise<void> {
  await Office.onReady();
}

/**
 * Lets Excel start the add-in with this workbook when it is opened next, pane or not: without it a cell that has to be
 * worked out shows #NAME?. Resolves in any case, for the log is whole without it and the pane offers to repair formulas.
 */
export async function startWithWorkbook(): Promise<void> {
  if (!Office.context.requirements.isSetSupported("SharedRuntime", "1.1")) return;
  try {
    await Office.addin.setStartupBehavior(Office.StartupBehavior.load);
  } catch (error) {
    console.warn("Bathsheet will not start with this workbook:", error);
  }
}

/** Excel's own shade, where the host says one; Excel on the web does not. */
export function hostShade(): HostShade | undefined {
  const theme = (Office.context as Partial<Office.Context> | undefined)?.officeTheme as
    Partial<Office.OfficeTheme> | undefined;
  if (theme === undefined) return undefined;
  if (theme.isDarkTheme !== undefined) return theme.isDarkTheme ? "dark" : "light";
  return shadeOfColor(theme.bodyBackgroundColor);
}

/** Perceived brightness by the weights of ITU-R BT.601. */
function shadeOfColor(color: string | undefined): HostShade | undefined {
  const parts = /^#?([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(color ?? "");
  if (parts === null) return undefined;
  const [red = 0, green = 0, blue = 0] = parts.slice(1).map((part) => Number.parseInt(part, 16));
  return 0.299 * red + 0.587 * green + 0.114 * blue < 128 ? "dark" : "light";
}
