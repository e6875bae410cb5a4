import type { OSpreadsheet } from "../../library.ts";

/** Hands the work of the running batch to the plugin that performs it inside one command. */
export interface BatchSlot {
  work: (() => void) | undefined;
}

export const batchCommand = "BATHSHEET_BATCH";

/** A batch is one command to the grid, hence one evaluation and one undo step, however many cells it writes. */
export function registerBatchCommand(library: OSpreadsheet): void {
  const plugins = library.registries.featurePluginRegistry;
  if (plugins.contains("bathsheet batch")) return;
  class BatchPlugin extends library.UIPlugin {
    private readonly slot: BatchSlot | undefined;

    constructor(config: ConstructorParameters<typeof library.UIPlugin>[0]) {
      super(config);
      this.slot = config.custom["bathsheetBatch"] as BatchSlot | undefined;
    }

    override handle(command: { readonly type: string }): void {
      if (command.type === batchCommand) this.slot?.work?.();
    }
  }
  // A batch may write to other sheets than the one in front; each write is checked by itself.
  (library.lockedSheetAllowedCommands as Set<string>).add(batchCommand);
  // The library types getters as instance-independent static lists.
  plugins.add("bathsheet batch", Object.assign(BatchPlugin, { getters: [] as const }));
}
