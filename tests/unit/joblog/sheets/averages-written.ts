import type { LogContent, LogRow } from "../../../../src/joblog/model/definition.ts";
import { averageWords } from "../../../../src/joblog/model/words.ts";
import { workedOut } from "../evaluate/worked-out.ts";

/** A log's content once each line of Stock has the average written down that follows from the lines before, the earliest first, as the form does. */
export async function averagesWritten(content: LogContent): Promise<LogContent> {
  const moves = content.rows.stockMoves ?? [];
  const log = await workedOut(content);
  const open = log.rows.stockMoves
    .map(({ cells }) => cells)
    .filter(({ averageCheck }) => averageCheck === averageWords.notWritten)
    .sort((one, other) => Number(one.order) - Number(other.order));
  const [first] = open;
  if (first === undefined) return content;
  const written = moves.map((move): LogRow<"stockMoves"> =>
    move.id === first.id ? { ...move, averageAfter: first.averageWouldBe } : move,
  );
  return averagesWritten({ ...content, rows: { ...content.rows, stockMoves: written } });
}

/** The same with the unit cost of each addition written down. */
export async function costsWritten(content: LogContent): Promise<LogContent> {
  const averaged = await averagesWritten(content);
  const log = await workedOut(averaged);
  const additions = (content.rows.additions ?? []).map((addition): LogRow<"additions"> => {
    const worked = log.rows.additions.find(({ cells }) => cells.id === addition.id);
    return { ...addition, unitCost: worked?.cells.averageThen };
  });
  return { ...averaged, rows: { ...averaged.rows, additions } };
}
