import type { Area } from "../../address.ts";
import { ExcelError } from "../../excel-error.ts";
import type { Style } from "../../library.ts";
import { zoneOf } from "../../workbook/grid/grid.ts";
import { addConditionalFormat } from "../../workbook/rules.ts";
import type { Workbook } from "../../workbook/workbook.ts";
import { ClientObject, partOf } from "../requests/client-object.ts";
import { guard } from "../requests/guard.ts";
import type { Promised, Requests } from "../requests/requests.ts";
import { checkedColor } from "./look-object.ts";

/** A rule in the making: it reaches the grid as soon as it has a formula, and again with each look. */
interface Draft {
  readonly area: Area;
  readonly id: string;
  formula: string | undefined;
  style: Style;
}

class ConditionalFormatObject
  extends ClientObject<Draft, Excel.ConditionalFormat>
  implements Pick<Excel.ConditionalFormat, "custom" | "stopIfTrue">
{
  protected readonly scalars: readonly string[] = [];
  readonly custom: Excel.CustomConditionalFormat;

  constructor(requests: Requests, formats: ClientObject<Area, object>) {
    super(
      requests,
      "ConditionalFormat",
      partOf(formats, "conditional format", (area, workbook) => ({
        area,
        id: workbook.grid.model.uuidGenerator.smallUuid(),
        formula: undefined,
        style: {},
      })),
    );
    this.custom = guard("CustomConditionalFormat", {
      rule: this.ruleMembers(),
      format: this.formatMembers(),
    }) as Excel.CustomConditionalFormat;
  }

  protected fetch(): unknown {
    return undefined;
  }

  get stopIfTrue(): boolean {
    return this.loadedValue("stopIfTrue") as boolean;
  }
  /** The grid applies every matching rule, first ones on top. */
  set stopIfTrue(stop: boolean) {
    this.change("stopIfTrue", () => undefined, stop);
  }

  private draw(member: string, amend: (draft: Draft) => void): void {
    this.change(member, (draft, workbook) => {
      amend(draft);
      apply(draft, workbook);
    });
  }

  private ruleMembers(): unknown {
    let text = "";
    const write = (formula: string): void => {
      text = formula;
      this.draw("custom.rule.formula", (draft) => {
        draft.formula = formula;
      });
    };
    return guard("ConditionalFormatRule", {
      get formula(): string {
        return text;
      },
      set formula(formula: string) {
        write(formula);
      },
    });
  }

  private formatMembers(): unknown {
    const style = (member: string, change: (value: never) => Style): PropertyDescriptor => ({
      get: (): unknown => undefined,
      set: (value: never): void => {
        this.draw(member, (draft) => {
          draft.style = { ...draft.style, ...change(value) };
        });
      },
    });
    const fill = Object.defineProperties(
      {},
      {
        color: style("custom.format.fill.color", (color: string) => ({
          fillColor: checkedColor(color, "ConditionalRangeFill.color"),
        })),
      },
    );
    const font = Object.defineProperties(
      {},
      {
        color: style("custom.format.font.color", (color: string) => ({
          textColor: checkedColor(color, "ConditionalRangeFont.color"),
        })),
        bold: style("custom.format.font.bold", (bold: boolean) => ({ bold })),
        italic: style("custom.format.font.italic", (italic: boolean) => ({ italic })),
      },
    );
    return guard("ConditionalRangeFormat", {
      fill: guard("ConditionalRangeFill", fill),
      font: guard("ConditionalRangeFont", font),
    });
  }
}

function apply({ area, id, formula, style }: Draft, { grid }: Workbook): void {
  if (formula === undefined) return;
  addConditionalFormat(grid, area, {
    id,
    rule: {
      type: "CellIsRule",
      operator: "customFormula",
      values: [formula.startsWith("=") ? formula : `=${formula}`],
      style,
    },
  });
}

export class ConditionalFormatsObject
  extends ClientObject<Area, Excel.ConditionalFormatCollection>
  implements Pick<Excel.ConditionalFormatCollection, "add" | "clearAll" | "getCount">
{
  protected readonly scalars: readonly string[] = [];

  constructor(requests: Requests, range: ClientObject<Area, object>) {
    super(
      requests,
      "ConditionalFormatCollection",
      partOf(range, "conditional formats", (area) => area),
    );
  }

  protected fetch(): unknown {
    return undefined;
  }

  add(type: Parameters<Excel.ConditionalFormatCollection["add"]>[0]): Excel.ConditionalFormat {
    if (type !== "Custom")
      throw new ExcelError(
        "NotImplemented",
        `The stand-in has custom conditional formats only, not ${type}.`,
        "ConditionalFormatCollection.add",
      );
    return new ConditionalFormatObject(this.requests, this).face;
  }

  /** How many rules reach any of the cells. */
  getCount(): Promised<number> {
    return this.result("getCount", (area, { grid }) => {
      const { top, left, bottom, right } = zoneOf(area);
      const { getters } = grid.model;
      const touches = (range: string): boolean => {
        const { zone } = getters.getRangeFromSheetXC(area.sheet, range);
        return zone.top <= bottom && zone.bottom >= top && zone.left <= right && zone.right >= left;
      };
      return getters.getConditionalFormats(area.sheet).filter(({ ranges }) => ranges.some(touches)).length;
    });
  }

  clearAll(): void {
    this.change("clearAll", (area, { grid }) => {
      const { top, left, bottom, right } = zoneOf(area);
      const { getters } = grid.model;
      for (const { id, ranges } of [...getters.getConditionalFormats(area.sheet)]) {
        const zones = ranges.map((range) => getters.getRangeFromSheetXC(area.sheet, range).zone);
        if (zones.every((zone) => zone.top >= top && zone.left >= left && zone.bottom <= bottom && zone.right <= right))
          grid.do("REMOVE_CONDITIONAL_FORMAT", { sheetId: area.sheet, id });
      }
    });
  }
}
