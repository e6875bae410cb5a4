import { guard } from "./excel/guard.ts";

/** Requirement sets that the stand-in claims: the floor that the manifest asks for. */
const sets: Readonly<Record<string, number>> = { ExcelApi: 1.14, CustomFunctionsRuntime: 1.3, SharedRuntime: 1.1 };

/** The part of Office's common API that the add-in asks. */
export function makeOffice(): typeof Office {
  const info = { host: "Excel", platform: "OfficeOnline" };
  const requirements = guard("RequirementSetSupport", {
    isSetSupported: (name: string, version = "1.1"): boolean => Number(version) <= (sets[name] ?? 0),
  });
  const context = guard("Office.context", {
    requirements,
    officeTheme: undefined,
    host: "Excel",
    platform: "OfficeOnline",
    displayLanguage: "en-US",
    contentLanguage: "en-US",
    diagnostics: { host: "Excel", platform: "OfficeOnline", version: "0" },
  });
  return guard("Office", {
    context,
    HostType: { Excel: "Excel" },
    PlatformType: { OfficeOnline: "OfficeOnline", PC: "PC", Mac: "Mac" },
    onReady: async (callback?: (ready: typeof info) => unknown): Promise<typeof info> => {
      await Promise.resolve();
      await callback?.(info);
      return info;
    },
    actions: guard("Office.actions", { associate: (): void => undefined }),
    addin: guard("Office.addin", {
      setStartupBehavior: (): Promise<void> => Promise.resolve(),
      showAsTaskpane: (): Promise<void> => Promise.resolve(),
      hide: (): Promise<void> => Promise.resolve(),
    }),
    StartupBehavior: { none: "None", load: "Load" },
  }) as typeof Office;
}
