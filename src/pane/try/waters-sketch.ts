import { alkalinityDose } from "../../../functions/charge/alkalinity-dose.ts";
import { hardnessDose } from "../../../functions/charge/hardness-dose.ts";
import { blend } from "../../../functions/water/blend.ts";
import { type Answer, askNumber } from "../../advice/ask.ts";
import { rowFacts } from "../../advice/bath-facts.ts";
import { bathFacts } from "../../advice/bath-values.ts";
import { labFigure } from "../../advice/lab-figure.ts";
import { amount, figure, percent } from "../../advice/wording/figures.ts";
import type { UnitSystem } from "../../core/units/unit-system.ts";
import { volume as volumeUnit } from "../../joblog/model/units-of.ts";
import type { Draft } from "../record/entry-form.ts";
import { callText, systemCell, type TypedCell, typedCell } from "./cells.ts";
import type { Sketch, SketchContext } from "./sketch.ts";

interface Water {
  readonly name: string;
  readonly hardness: number;
  readonly alkalinity: number;
}

function watersOf({ log }: SketchContext): readonly Water[] {
  return (log?.rows.waters ?? []).map(rowFacts).flatMap((row) => {
    const [name, hardness, alkalinity] = [row.text("water"), row.number("hardness"), row.number("alkalinity")];
    return name === undefined || hardness === undefined || alkalinity === undefined
      ? []
      : [{ name, hardness, alkalinity }];
  });
}

/** A tested 0 says its unit where bare numbers stand beside it: a bare one could be a blank cell. */
const labNumber = (value: number): TypedCell => (value === 0 ? "0 mg/L" : Number(value.toPrecision(6)));

function blendOf(values: Draft, waters: readonly Water[]): Water | undefined {
  const [one, two] = ["first", "second"].map((key) => waters.find(({ name }) => name === values[key]));
  const share = Number(values["share"] ?? "");
  if (one === undefined || two === undefined || one === two || !(share > 0 && share < 100)) return undefined;
  const mixed = (kind: "hardness" | "alkalinity"): Answer<number> =>
    askNumber(blend, { values: [[labNumber(one[kind])], [labNumber(two[kind])]], volumes: [[100 - share], [share]] });
  const [hardness, alkalinity] = [mixed("hardness"), mixed("alkalinity")];
  return hardness.known && alkalinity.known
    ? {
        name: `${one.name} with ${percent(share / 100)} ${two.name}`,
        hardness: hardness.value,
        alkalinity: alkalinity.value,
      }
    : undefined;
}

interface Dressing {
  readonly volume: TypedCell;
  readonly capacity: TypedCell;
  readonly labelHardness: TypedCell;
  readonly alkali: TypedCell;
}

/** What the extra doses of a water are asked with. */
const askedOf = ({ hardness, alkalinity }: Water, { volume, capacity, labelHardness, alkali }: Dressing) => ({
  hardness: { volume, hardness: labFigure(hardness), capacity, label_hardness: labelHardness },
  alkalinity: { volume, alkalinity: labFigure(alkalinity), strength_eq_L: alkali },
});

function extrasOf(water: Water, dressing: Dressing, system: UnitSystem): readonly Answer<number>[] {
  const asked = askedOf(water, dressing);
  return [
    askNumber(hardnessDose, { ...asked.hardness, system }),
    askNumber(alkalinityDose, { ...asked.alkalinity, system }),
  ];
}

function formulaOf(water: Water, dressing: Dressing, system: TypedCell): string {
  const asked = askedOf(water, dressing);
  return `=${callText(hardnessDose, { ...asked.hardness, system })}+${callText(alkalinityDose, { ...asked.alkalinity, system })}`;
}

export const watersSketch: Sketch = {
  id: "waters",
  title: "Waters side by side",
  step: "charge",
  purpose:
    "What hardness and alkalinity cost in concentrate. Softened water keeps its alkalinity, which eats alkali one for one.",
  fields: (context) => {
    const names = watersOf(context).map(({ name }) => name);
    return [
      { key: "volume", label: `Bath, ${volumeUnit[context.system]}` },
      {
        key: "capacity",
        label: "Hardness capacity, mg/mL",
        hint: "Of the concentrate, from its maker or a jar test.",
      },
      { key: "labelHardness", label: "Label covers hardness to, mg/L" },
      { key: "alkali", label: "Alkali strength, eq/L", hint: "Of the concentrate itself." },
      { key: "first", label: "Blend of", choices: names },
      { key: "second", label: "and", choices: names },
      { key: "share", label: "Second, %" },
    ];
  },
  proposals: (context) => {
    const facts = context.log === undefined ? undefined : bathFacts(context.log, context.bath);
    const code = facts?.text("concentrate");
    const row = context.log?.rows.concentrates.find(({ cells }) => cells.concentrate === code);
    const concentrate = row === undefined ? undefined : rowFacts(row);
    const shown = (value: number | undefined): string => (value === undefined ? "" : figure(value, 4));
    const [first, ...others] = watersOf(context);
    return {
      volume: shown(facts?.number("workingVolume")),
      capacity: shown(concentrate?.number("capacity")),
      labelHardness: labFigure(concentrate?.number("labelHardness")) ?? "",
      alkali: shown(concentrate?.number("alkalinityStrength")),
      first: first?.name ?? "",
      second: others.at(-1)?.name ?? "",
      share: "25",
    };
  },
  work: (values, context) => {
    const { system } = context;
    const waters = watersOf(context);
    const mixed = blendOf(values, waters);
    const [volume, capacity, labelHardness, alkali] = ["volume", "capacity", "labelHardness", "alkali"].map((key) =>
      typedCell(values, key),
    );
    if (waters.length === 0)
      return {
        findings: [
          {
            tone: "watch",
            text: "Enter the waters, with hardness and alkalinity, on the Job sheet or under More, Shop.",
          },
        ],
      };
    if (volume === null || capacity === null || alkali === null) return { findings: [] };
    const dressing: Dressing = {
      volume: volume ?? null,
      capacity: capacity ?? null,
      labelHardness: labelHardness ?? null,
      alkali: alkali ?? null,
    };
    const compared = [...waters, ...(mixed === undefined ? [] : [mixed])].map((water) => ({
      water,
      answers: extrasOf(water, dressing, system),
    }));
    const failed = compared.flatMap(({ answers }) => answers).find((answer) => !answer.known);
    if (failed !== undefined) return { findings: [{ tone: "act", text: failed.why }] };
    const value = (answer: Answer<number> | undefined): number => (answer?.known === true ? answer.value : 0);
    const [last] = compared.slice(-1);
    return {
      findings: [],
      table: {
        headers: ["Water", "Hardness, alkalinity", `Extra, ${volumeUnit[system]}, of it for hardness + alkalinity`],
        rows: compared.map(({ water, answers: [forHardness, forAlkalinity] }) => [
          water.name,
          `${figure(water.hardness, 0)}, ${figure(water.alkalinity, 0)} mg/L`,
          `${amount(value(forHardness) + value(forAlkalinity))} (${amount(value(forHardness))} + ${amount(value(forAlkalinity))})`,
        ]),
      },
      ...(last === undefined
        ? {}
        : {
            formula: formulaOf(last.water, dressing, systemCell(system)),
          }),
    };
  },
};
