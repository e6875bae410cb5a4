import type { Area } from "../../address.ts";
import { invalidArgument } from "../../excel-error.ts";
import type { Style } from "../../library.ts";
import { positionOf } from "../../workbook/grid/grid.ts";
import type { Workbook } from "../../workbook/workbook.ts";
import { ClientObject, partOf } from "../requests/client-object.ts";
import { mapArea } from "../requests/matrix.ts";
import type { Requests } from "../requests/requests.ts";

export function checkedColor(color: string, location: string): string {
  if (!/^#[0-9a-f]{6}$/i.test(color)) throw invalidArgument(`"${color}" is no #RRGGBB color.`, location);
  return color.toUpperCase();
}

/** One value where all cells agree, null where they differ, as Excel reports a mixed look. */
function common(area: Area, workbook: Workbook, read: (style: Style) => unknown): unknown {
  const inside = workbook.grid.clip(area);
  const found = new Set(
    inside === undefined
      ? [read({})]
      : mapArea(inside, (cell) => read(workbook.grid.model.getters.getCell(positionOf(cell))?.style ?? {})).flat(),
  );
  return found.size === 1 ? [...found][0] : null;
}

/** A proxy for a part of a range's look. */
export abstract class LookObject<Face extends object> extends ClientObject<Area, Face> {
  protected abstract readonly looks: Readonly<Record<string, (style: Style) => unknown>>;

  constructor(requests: Requests, kind: string, range: ClientObject<Area, object>) {
    super(
      requests,
      kind,
      partOf(range, "look", (area) => area),
    );
  }

  protected get scalars(): readonly string[] {
    return Object.keys(this.looks);
  }

  protected fetch(property: string, area: Area, workbook: Workbook): unknown {
    return common(area, workbook, this.looks[property] ?? ((): unknown => null));
  }

  protected look(member: string, style: Style, value: unknown): void {
    this.change(
      member,
      (area, workbook) => {
        workbook.requireUnlocked(area.sheet, `${this.kind}.${member}`);
        workbook.grid.look(area, style);
      },
      value,
    );
  }
}
