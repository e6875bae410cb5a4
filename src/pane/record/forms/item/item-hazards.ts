import { rowsOfBath } from "../../../../advice/bath-facts.ts";
import type { DraftedRow } from "../../../../advice/drafted-row.ts";
import type { LogContext } from "../../../../advice/log-context.ts";
import { type keepOutKinds, yesNo } from "../../../../joblog/model/words.ts";
import { mark, usualKeepOutWords, usualSought } from "../../../../joblog/sheets/items/keep-out-words.ts";

const [yes] = yesNo;

interface Sought {
  readonly kind: (typeof keepOutKinds)[number];
  readonly part: string;
}

const kindOf = (kind: unknown): Sought["kind"] => (kind === "metal" ? "metal" : "hazard");

const usual: readonly Sought[] = usualKeepOutWords.map((row) => ({ kind: kindOf(row.kind), part: usualSought(row) }));

/** The shop's own words, as its sheet looks for them. */
const listed = ({ log }: LogContext): readonly Sought[] =>
  log.rows.keepOutWords.flatMap(({ cells: { kind, sought } }) =>
    typeof sought === "string" && sought !== "" ? [{ kind: kindOf(kind), part: sought.toLowerCase() }] : [],
  );

/** The first word of the line that is on the shop's list or a usual one; words come out whole. */
function found(item: DraftedRow<"items">, kind: Sought["kind"], context: LogContext): string | undefined {
  const words = item.text("words") ?? "";
  const part = [...listed(context), ...usual].find((one) => one.kind === kind && words.includes(one.part))?.part;
  if (part === undefined) return undefined;
  const of = (text: string): readonly string[] => text.split(mark).filter((word) => word !== "");
  return of(words.slice(words.indexOf(part)))
    .slice(0, of(part).length)
    .join(" ");
}

/** Asked before a piece goes into an alkaline bath that its words or its age speak against. */
export function bathDoubts(item: DraftedRow<"items">, context: LogContext): readonly string[] {
  const bath = item.text("bath");
  const claims =
    bath === undefined ? [] : [...new Set(rowsOfBath(context.log, "loads", bath).map((row) => row.cells.claim))];
  const shared = claims.some((claim) => claim !== item.text("claim"));
  const [metal, hazard] = [found(item, "metal", context), found(item, "hazard", context)];
  return [
    ...(hazard === undefined
      ? []
      : [
          `"${hazard}" in this line: batteries, aerosols, gas, paint, solvent and fuel never go in a tank; they go to hazardous-waste collection. Is it none of these?`,
        ]),
    ...(metal === undefined
      ? []
      : [
          `"${metal}" in this line: alkali attacks aluminum, zinc, galvanized, tin and lead and their alloys, and hydrogen forms. Keep it out of the bath, unless you know it is none of these.`,
        ]),
    ...(item.text("pre1978") === yes && shared
      ? [
          "Old paint or glaze may hold lead, and other claims share this bath. Has it been wipe-tested, and does it get a bath of its own?",
        ]
      : []),
  ];
}
