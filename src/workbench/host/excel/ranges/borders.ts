import type { Area } from "../../address.ts";
import { invalidArgument } from "../../excel-error.ts";
import type { BorderDescription } from "../../library.ts";
import { zoneOf } from "../../workbook/grid/grid.ts";
import { ClientObject, partOf } from "../requests/client-object.ts";
import type { Requests } from "../requests/requests.ts";

/** Excel's edges by the grid's word for them; diagonals are not drawn. */
const edges = {
  EdgeTop: "top",
  EdgeBottom: "bottom",
  EdgeLeft: "left",
  EdgeRight: "right",
  InsideVertical: "v",
  InsideHorizontal: "h",
} as const;

const gridStyles: Readonly<Record<string, BorderDescription["style"]>> = {
  Continuous: "thin",
  Dash: "dashed",
  Dot: "dotted",
  DashDot: "dashed",
  DashDotDot: "dashed",
  Double: "medium",
  SlantDashDot: "dashed",
};

interface BorderLook {
  style: string;
  color: string;
}

class RangeBorderObject
  extends ClientObject<Area, Excel.RangeBorder>
  implements Pick<Excel.RangeBorder, "style" | "color" | "weight">
{
  protected readonly scalars: readonly string[] = [];
  private readonly edge: keyof typeof edges;
  private readonly look: BorderLook;

  constructor(requests: Requests, range: ClientObject<Area, object>, edge: keyof typeof edges, look: BorderLook) {
    super(
      requests,
      "RangeBorder",
      partOf(range, "border", (area) => area),
    );
    this.edge = edge;
    this.look = look;
  }

  protected fetch(): unknown {
    return undefined;
  }

  private draw(member: string, value: string): void {
    this.change(
      member,
      (area, { grid }) => {
        const style = gridStyles[this.look.style];
        grid.makeRoom(area);
        grid.do("SET_ZONE_BORDERS", {
          sheetId: area.sheet,
          target: [zoneOf(area)],
          border:
            style === undefined ? { position: "clear" } : { position: edges[this.edge], color: this.look.color, style },
        });
      },
      value,
    );
  }

  get style(): Excel.BorderLineStyle {
    return this.loadedValue("style") as Excel.BorderLineStyle;
  }
  set style(style: Excel.RangeBorder["style"]) {
    this.look.style = style;
    this.draw("style", style);
  }

  get color(): string {
    return this.loadedValue("color") as string;
  }
  set color(color: string) {
    this.look.color = color;
    if (this.look.style === "None") this.look.style = "Continuous";
    this.draw("color", color);
  }

  /** The grid draws one weight; the word is read back. */
  get weight(): Excel.BorderWeight {
    return this.loadedValue("weight") as Excel.BorderWeight;
  }
  set weight(weight: Excel.RangeBorder["weight"]) {
    this.change("weight", () => undefined, weight);
  }
}

export class RangeBordersObject
  extends ClientObject<Area, Excel.RangeBorderCollection>
  implements Pick<Excel.RangeBorderCollection, "getItem">
{
  protected readonly scalars: readonly string[] = [];
  private readonly looks = new Map<string, BorderLook>();

  constructor(requests: Requests, range: ClientObject<Area, object>) {
    super(
      requests,
      "RangeBorderCollection",
      partOf(range, "borders", (area) => area),
    );
  }

  protected fetch(): unknown {
    return undefined;
  }

  getItem(index: Parameters<Excel.RangeBorderCollection["getItem"]>[0]): Excel.RangeBorder {
    if (!(index in edges))
      throw invalidArgument(`The stand-in draws no ${index} border.`, "RangeBorderCollection.getItem");
    const look = this.looks.get(index) ?? { style: "Continuous", color: "#000000" };
    this.looks.set(index, look);
    return new RangeBorderObject(this.requests, this, index as keyof typeof edges, look).face;
  }
}
