import type { Workbook } from "../../workbook/workbook.ts";
import { ClientObject } from "./client-object.ts";
import { pathsOf } from "./property-paths.ts";
import type { Promised } from "./requests.ts";

/** A collection: `items` appear when loaded, each a proxy with the asked properties loaded. */
export abstract class CollectionObject<
  Owner,
  Entry,
  Item extends { load: (properties: string) => unknown },
  Face extends object,
> extends ClientObject<Owner, Face> {
  protected readonly scalars: readonly string[] = [];
  private loadedItems: readonly Item[] | undefined;

  protected abstract entries(owner: Owner, workbook: Workbook): readonly Entry[];

  /** A proxy for one entry, found anew whenever its batch runs. */
  protected abstract item(entry: Entry): Item;

  protected fetch(): unknown {
    return undefined;
  }

  get items(): Item[] {
    if (this.loadedItems === undefined) return this.loadedValue("items") as Item[];
    return [...this.loadedItems];
  }

  override load(properties?: string | string[] | object): Face {
    const named = pathsOf(properties) ?? [];
    // Excel loads every property of every item then, and fails at those that an item of its kind lacks.
    if (named.length === 0 || named.includes("items"))
      throw new Error(
        `The workbench's stand-in for Excel loads ${this.kind} by named properties only, as "items/name".`,
      );
    const wanted = named.map((path) => path.replace(/^items\/?/, "")).filter((path) => path !== "" && path !== "$none");
    this.requests.enqueue("read", `${this.kind}.load`, () => {
      const owner = this.liveOrNull();
      if (owner === undefined) return;
      this.requests.performNow(() => {
        this.loadedItems = this.entries(owner, this.requests.workbookNow).map((entry) => this.item(entry));
        for (const item of this.loadedItems) if (wanted.length > 0) item.load(wanted.join(","));
      });
    });
    return this.face;
  }

  getCount(): Promised<number> {
    return this.result("getCount", (owner, workbook) => this.entries(owner, workbook).length);
  }
}
