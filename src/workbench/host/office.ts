import { guard } from "./excel/requests/guard.ts";

/** What of Office is the host's own to say, for the add-in to ask or to set. */
export interface OfficeState {
  /** Requirement sets by name, with the highest version that is there. */
  readonly sets: Map<string, number>;
  /** What the workbook does with the add-in when it is opened next. */
  startup: "None" | "Load";
}

/** The floor that the manifest asks for, and files, which the grid hands over. */
export function usualOffice(): OfficeState {
  const sets = new Map(
    Object.entries({ ExcelApi: 1.14, CustomFunctionsRuntime: 1.3, SharedRuntime: 1.1, File: 1.1, CompressedFile: 1.1 }),
  );
  return { sets, startup: "None" };
}

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
export function makeOffice(exported: () => Promise<Uint8Array>, state: OfficeState): typeof Office {
  const info = { host: "Excel", platform: "OfficeOnline" };
  const requirements = guard("RequirementSetSupport", {
    isSetSupported: (name: string, version = "1.1"): boolean => Number(version) <= (state.sets.get(name) ?? 0),
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
      setStartupBehavior: (behavior: OfficeState["startup"]): Promise<void> => {
        state.startup = behavior;
        return Promise.resolve();
      },
      showAsTaskpane: (): Promise<void> => Promise.resolve(),
      hide: (): Promise<void> => Promise.resolve(),
    }),
    StartupBehavior: { none: "None", load: "Load" },
  }) as typeof Office;
}
