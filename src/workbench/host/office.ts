import { guard } from "./excel/requests/guard.ts";

/** Requirement sets that the stand-in claims: the floor that the manifest asks for. */
const sets: Readonly<Record<string, number>> = { ExcelApi: 1.14, CustomFunctionsRuntime: 1.3, SharedRuntime: 1.1 };

type FileCallback = (
  result:
    | { readonly status: "succeeded"; readonly value: unknown }
    | { readonly status: "failed"; readonly error: { readonly message: string } },
) => void;

/** The open workbook in slices, as the common API hands a file over. */
function documentOf(exported: () => Promise<Uint8Array>): unknown {
  const openFile = (bytes: Uint8Array, sliceSize: number): unknown =>
    guard("File", {
      size: bytes.length,
      sliceCount: Math.ceil(bytes.length / sliceSize),
      getSliceAsync: (index: number, callback: FileCallback): void => {
        const data = [...bytes.subarray(index * sliceSize, (index + 1) * sliceSize)];
        callback({ status: "succeeded", value: { index, size: data.length, data } });
      },
      closeAsync: (): void => undefined,
    });
  return guard("Document", {
    getFileAsync: (_type: string, { sliceSize }: { readonly sliceSize: number }, callback: FileCallback): void => {
      exported().then(
        (bytes) => {
          callback({ status: "succeeded", value: openFile(bytes, sliceSize) });
        },
        (error: unknown) => {
          callback({ status: "failed", error: { message: error instanceof Error ? error.message : String(error) } });
        },
      );
    },
  });
}

/** The part of Office's common API that the add-in asks; `exported` gives the workbook as a file. */
export function makeOffice(exported: () => Promise<Uint8Array>): typeof Office {
  const info = { host: "Excel", platform: "OfficeOnline" };
  const requirements = guard("RequirementSetSupport", {
    isSetSupported: (name: string, version = "1.1"): boolean => Number(version) <= (sets[name] ?? 0),
  });
  const context = guard("Office.context", {
    requirements,
    document: documentOf(exported),
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
    FileType: { Compressed: "compressed" },
    AsyncResultStatus: { Succeeded: "succeeded", Failed: "failed" },
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
