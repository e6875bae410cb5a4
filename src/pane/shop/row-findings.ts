import { dose } from "../../../functions/charge/dose.ts";
import { reorderPoint } from "../../../functions/money/reorder-point.ts";
import { unitPrice } from "../../../functions/money/unit-price.ts";
import { tankVolume } from "../../../functions/tank/tank-volume.ts";
import { hardnessClass } from "../../../functions/water/hardness-class.ts";
import { rimFindings } from "../../advice/amounts/tank-limits.ts";
import { askNumber, askText } from "../../advice/ask.ts";
import { findRow, rowFacts } from "../../advice/bath-facts.ts";
import type { FilledFields } from "../../advice/filled-fields.ts";
import type { Finding } from "../../advice/finding.ts";
import { amount, money } from "../../advice/wording/figures.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { ColumnId } from "../../joblog/formula/log-names.ts";
import type { LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import { volume as volumeUnit } from "../../joblog/model/units-of.ts";
import type { ShopTable } from "./shop-tables.ts";

interface Row<Table extends ShopTable> {
  readonly filled: FilledFields<ColumnId<Table>>;
  /** The row's key in the log; undefined for a new row. */
  readonly key: string | undefined;
  readonly changed: readonly string[];
  readonly log: LogSnapshot;
  readonly system: UnitSystem;
}

function bathsWith(log: LogSnapshot, column: "tank" | "water" | "concentrate", key: string | undefined): string {
  return key === undefined
    ? ""
    : log.rows.baths
        .filter(({ cells }) => String(cells[column] ?? "") === key)
        .map(({ cells }) => String(cells.bath ?? ""))
        .join(", ");
}

function ofTank({ filled, key, changed, log, system }: Row<"tanks">): readonly Finding[] {
  const [length, width, depth] = (["length", "width", "fillDepth"] as const).map(filled.number);
  if (length === undefined || width === undefined || depth === undefined) return [];
  const volume = askNumber(tankVolume, {
    length,
    width,
    depth,
    displacement: filled.number("displacement"),
    system,
  });
  const baths = bathsWith(log, "tank", key);
  const measured = (["length", "width", "fillDepth", "displacement"] as const).some((id) => changed.includes(id));
  return [
    volume.known
      ? { tone: "good", text: `Working volume ${amount(volume.value)} ${volumeUnit[system]}.` }
      : { tone: "act", text: volume.why },
    ...rimFindings(filled.number("height"), depth),
    ...(measured && baths !== "" ? [{ tone: "watch", text: `Recalculated with it: ${baths}.` } as const] : []),
  ];
}

function ofWater({ filled, key, changed, log }: Row<"waters">): readonly Finding[] {
  const hardness = filled.number("hardness");
  const answer =
    hardness === undefined ? undefined : askText(hardnessClass, { hardness: hardness === 0 ? "0 mg/L" : hardness });
  const baths = bathsWith(log, "water", key);
  return [
    ...(answer === undefined
      ? []
      : [
          answer.known
            ? ({ tone: "good", text: `Hardness class: ${answer.value}.` } as const)
            : ({ tone: "act", text: answer.why } as const),
        ]),
    ...(changed.length > 0 && baths !== ""
      ? [
          {
            tone: "watch",
            text: `Baths filled with it follow: ${baths}. For water of another test, add one of its own name.`,
          } as const,
        ]
      : []),
  ];
}

function ofConcentrate({ filled, key, changed, log, system }: Row<"concentrates">): readonly Finding[] {
  const [price, pack] = [filled.number("packPrice"), filled.number("packVolume")];
  const unit =
    price === undefined || pack === undefined
      ? undefined
      : askNumber(unitPrice, { pack_price: price, pack_volume: pack, system });
  const strengths = (["labelLight", "labelMedium", "labelHeavy"] as const).flatMap((id): readonly Finding[] => {
    const text = filled.text(id);
    const answer = text === undefined ? undefined : askNumber(dose, { volume: 100, rate: text, system });
    return answer?.known === false ? [{ tone: "watch", text: `"${text ?? ""}" gives no dose: ${answer.why}` }] : [];
  });
  const baths = bathsWith(log, "concentrate", key);
  return [
    ...(unit === undefined
      ? []
      : [
          unit.known
            ? ({ tone: "good", text: `${money(unit.value)} per ${volumeUnit[system]}.` } as const)
            : ({ tone: "act", text: unit.why } as const),
        ]),
    ...strengths,
    ...(changed.length > 0 && baths !== ""
      ? [
          {
            tone: "watch",
            text: `Past additions are recalculated and repriced: ${baths}. For a delivery at another price, add one of its own name.`,
          } as const,
        ]
      : []),
  ];
}

/** What stands ready for the days that a delivery takes, at the use so far. */
function ofStock({ filled, key, log, system }: Row<"stockBalance">): readonly Finding[] {
  const [lead, safety] = [filled.number("leadDays"), filled.number("safety")];
  const name = key ?? filled.text("concentrate");
  const row = name === undefined ? undefined : findRow(log, "stockBalance", "concentrate", name);
  const use = row === undefined ? undefined : rowFacts(row).number("dailyUse");
  if (lead === undefined)
    return [{ tone: "plain", text: "Without a delivery time the log cannot say when to reorder." }];
  if (use === undefined)
    return [
      {
        tone: "plain",
        text: "None has been used yet: the reorder point follows with the first days of use.",
      },
    ];
  const point = askNumber(reorderPoint, { daily_use: use, lead_days: lead, safety });
  return [
    point.known
      ? {
          tone: "good",
          text: `Reorder at ${amount(point.value)} ${volumeUnit[system]}, at ${amount(use)} ${volumeUnit[system]} a day of use.`,
        }
      : { tone: "act", text: point.why },
  ];
}

const byTable: { readonly [Table in ShopTable]?: (row: Row<Table>) => readonly Finding[] } = {
  tanks: ofTank,
  waters: ofWater,
  concentrates: ofConcentrate,
  stockBalance: ofStock,
};

/** A row whose table only the description knows. */
type Described = Omit<Row<ShopTable>, "filled"> & { readonly filled: FilledFields<string> };

/** What a row comes to: its computed figures, and which baths follow a change. */
export function rowFindings(table: ShopTable, row: Described): readonly Finding[] {
  return byTable[table]?.(row) ?? [];
}
