import type { UnitSystem } from "../../core/units/unit-system.ts";
import type { AnyRow, LogSnapshot } from "../../joblog/model/log-snapshot.ts";
import type { Draft } from "../record/entry-form.ts";
import { fieldOf } from "../record/fields-of.ts";
import { rowFindings } from "./row-findings.ts";
import { type FilledShopForm, readForm, type ShopForm } from "./shop-form.ts";
import { inputsOf, keyColumn, keysOf, shopRow, type ShopTable, tableWords } from "./shop-tables.ts";

/** Adds a row to one of the shop's lists, or changes the one of that key; a key once used is not renamed here. */
export function rowForm(log: LogSnapshot, system: UnitSystem, table: ShopTable, key: string | undefined): ShopForm {
  const { one } = tableWords[table];
  const keyId = keyColumn(table).id;
  const row: AnyRow | undefined = key === undefined ? undefined : shopRow(log, table, key);
  const fields = inputsOf(table)
    .filter(({ id }) => key === undefined || id !== keyId)
    .map((column) => fieldOf(log, column));
  const fill = (typed: Draft): FilledShopForm => {
    const { values, converted, problems, filled, changed } = readForm(
      fields,
      (id) => row?.cells[id],
      typed,
      system,
      log.fields.currency,
    );
    const name = filled.text(keyId);
    const taken =
      key === undefined && name !== undefined
        ? keysOf(log, table).find((given) => given.toLowerCase() === name.toLowerCase())
        : undefined;
    const all = [
      ...problems,
      ...(taken === undefined
        ? []
        : [
            {
              key: keyId,
              message: `${keyColumn(table).label}: "${taken}" is in the log already. Give it another name, or change that one.`,
            },
          ]),
    ];
    const value = (id: string): string | number | undefined => filled.number(id) ?? filled.text(id);
    const changes =
      row === undefined
        ? { rows: [{ table, row: Object.fromEntries(fields.map(({ key: id }) => [id, value(id)])) }] }
        : {
            changes: [
              {
                table,
                position: row.position,
                cells: Object.fromEntries(changed.map((id) => [id, { before: row.cells[id], after: value(id) }])),
              },
            ],
          };
    return {
      values,
      converted,
      problems: all,
      findings: rowFindings(table, { filled, key, changed, log, system }),
      ...(all.length > 0 || changed.length === 0 ? {} : { changes }),
    };
  };
  return {
    saved: (values) => `${one} ${key ?? values[keyId]?.trim() ?? ""}`,
    title: key === undefined ? `Add a ${one}` : `${one.slice(0, 1).toUpperCase()}${one.slice(1)} ${key}`,
    purpose:
      key === undefined ? "The other sheets look it up by its name." : "Its name stays, since other rows look it up.",
    groups: [{ fields }],
    fill,
  };
}
