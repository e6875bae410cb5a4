import type { OSpreadsheet } from "../../library.ts";

/** The grid's list of the colors in use, which is private to it by its types. */
interface ColorsOfTheGrid {
  finalize(): void;
  getCustomColors(): readonly string[];
}

const prepared = new WeakSet<object>();

/** The grid looks through every cell after every command for the colors that its palette offers; here when the palette asks. Safe to repeat. */
export function listColorsWhenAsked(library: OSpreadsheet): void {
  const plugins = library.registries.coreViewsPluginRegistry;
  const Colors = plugins.get("custom_colors");
  if (prepared.has(Colors)) return;
  const listed = Colors.prototype as unknown as ColorsOfTheGrid;
  class ColorsWhenAsked extends Colors {
    override finalize(): void {
      // Nothing to do yet: what was written stays marked as not looked through.
    }

    getCustomColors(): readonly string[] {
      listed.finalize.call(this);
      return listed.getCustomColors.call(this);
    }
  }
  prepared.add(ColorsWhenAsked);
  plugins.replace("custom_colors", ColorsWhenAsked);
}
