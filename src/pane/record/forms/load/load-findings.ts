import { rowFacts, rowsOfBath } from "../../../../advice/bath-facts.ts";
import type { FilledFields } from "../../../../advice/filled-fields.ts";
import type { Finding } from "../../../../advice/finding.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { figure, percent } from "../../../../advice/wording/figures.ts";
import type { ColumnId } from "../../../../joblog/formula/log-names.ts";
import type { FieldId } from "../../../../joblog/formula/log-names.ts";
import { soilGrades, yesNo } from "../../../../joblog/model/words.ts";

const [yes] = yesNo;

const weightOf: Readonly<Record<(typeof soilGrades)[number], FieldId>> = {
  light: "weightLight",
  medium: "weightMedium",
  heavy: "weightHeavy",
};

/** What a load counts for by each basis of a share, as the Loads sheet has it. */
interface Units {
  readonly baskets: number;
  readonly weighted: number;
  readonly minutes: number;
}

function unitsOf(filled: FilledFields<ColumnId<"loads">>, context: LogContext): Units | undefined {
  const [baskets, minutes] = [filled.number("baskets"), filled.number("minutes")];
  const grade = soilGrades.find((one) => one === filled.text("soil"));
  const weight = grade === undefined ? undefined : context.log.fields[weightOf[grade]];
  if (baskets === undefined || minutes === undefined || typeof weight !== "number") return undefined;
  return { baskets, weighted: baskets * weight, minutes: baskets * minutes };
}

/** What the load form says while it is filled in: what it counts for, and the claim's share of the bath with it. */
export function loadFindings(filled: FilledFields<ColumnId<"loads">>, context: LogContext): readonly Finding[] {
  const units = unitsOf(filled, context);
  const [bath, claim] = [filled.text("bath"), filled.text("claim")];
  if (units === undefined || bath === undefined || claim === undefined) return [];
  if (filled.text("rework") === yes)
    return [
      {
        tone: "plain",
        text: `Rework: counts nothing toward the share of claim ${claim}, which was charged for these pieces before.`,
      },
    ];
  const loads = rowsOfBath(context.log, "loads", bath);
  const sum = (column: ColumnId<"loads">, ofClaim: boolean): number =>
    loads.reduce(
      (total, row) => total + (ofClaim && row.cells.claim !== claim ? 0 : (rowFacts(row).number(column) ?? 0)),
      0,
    );
  const share = (column: ColumnId<"loads">, more: number): string =>
    percent((sum(column, true) + more) / (sum(column, false) + more));
  return [
    {
      tone: "plain",
      text: `Counts ${figure(units.baskets, 2)} by baskets, ${figure(units.weighted, 2)} by soil, ${figure(units.minutes, 1)} by basket-minutes.`,
    },
    {
      tone: "plain",
      text: `With it claim ${claim} bears ${share("counted", units.baskets)} of this bath by baskets, ${share("weighted", units.weighted)} by soil, ${share("basketMinutes", units.minutes)} by basket-minutes.`,
    },
  ];
}
