import type { LogSnapshot } from "../joblog/model/log-snapshot.ts";
import { isSameText } from "../joblog/model/same-text.ts";
import { rowFacts } from "./bath-facts.ts";

/** A receipt whose last day is over and of which some may still stand on the shelf. */
export interface ExpiredLot {
  readonly lot: string | undefined;
  /** The last day by the pack, as a serial number. */
  readonly expiry: number;
}

/** `book`: on the shelf now, undefined if never counted. What came later is taken to be still there: the oldest is used first. */
export function expiredLots(
  { rows }: LogSnapshot,
  concentrate: string,
  book: number | undefined,
  now: number,
): readonly ExpiredLot[] {
  const receipts = rows.stockMoves
    .map(rowFacts)
    .filter((move) => move.text("kind") === "receipt" && isSameText(move.text("concentrate") ?? "", concentrate))
    .sort((one, other) => (other.number("order") ?? 0) - (one.number("order") ?? 0));
  const lots: ExpiredLot[] = [];
  let cameLater = 0;
  for (const receipt of receipts) {
    const expiry = receipt.number("expiry");
    const isLeft = book === undefined || book - cameLater > 0.000_5;
    if (expiry !== undefined && Math.floor(now) > expiry && isLeft) lots.push({ lot: receipt.text("lot"), expiry });
    cameLater += receipt.number("amount") ?? 0;
  }
  return lots;
}
