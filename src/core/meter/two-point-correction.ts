import { checkWithin, isWithin } from "../limits/domain.ts";
import { DomainError } from "../limits/domain-error.ts";
import { readablePh } from "../limits/domains.ts";
import type { PH } from "../units/quantity.ts";
import { ph } from "../units/quantity.ts";

/** A buffer and what the meter read in it. */
export interface BufferReading {
  readonly buffer: PH;
  readonly read: PH;
}

/** Buffers apart over readings apart; a fifth off, an electrode is dirty, cracked or in the wrong buffer (own choice). */
const credibleStep = { low: 1 / 1.2, high: 1.25 } as const;

const difference = (one: PH, other: PH): string => String(Number(Math.abs(one - other).toPrecision(4)));

/**
 * What a meter would have read had it been adjusted on two buffers: the straight line through both.
 *
 * @throws OutOfRange for a value outside its domain
 * @throws DomainError where the meter read both alike or the lower buffer higher, or the line leads to no pH
 * @throws DomainError "no-answer" where the meter is too far off to be corrected
 */
export function twoPointCorrected(reading: PH, one: BufferReading, other: BufferReading): PH {
  checkWithin("reading", reading, readablePh);
  checkWithin("buffer 1", one.buffer, readablePh);
  checkWithin("read 1", one.read, readablePh);
  checkWithin("buffer 2", other.buffer, readablePh);
  checkWithin("read 2", other.read, readablePh);
  if (one.buffer === other.buffer)
    throw new DomainError("invalid", "Buffer 1 and buffer 2 have the same pH; a correction takes two different ones");
  if (one.read === other.read)
    throw new DomainError("invalid", "Read 1 and read 2 are the same, so there is no line to correct by");
  const slope = (other.buffer - one.buffer) / (other.read - one.read);
  if (slope < 0)
    throw new DomainError(
      "invalid",
      "Read 1 and read 2 run against the buffers; check which reading belongs to which buffer",
    );
  const corrected = ph(one.buffer + (reading - one.read) * slope);
  if (!isWithin(corrected, readablePh)) {
    throw new DomainError(
      "invalid",
      `Read 1 and read 2 differ by ${difference(one.read, other.read)} and the buffers by ${difference(one.buffer, other.buffer)}; by that line the reading would be pH ${String(Number(corrected.toPrecision(4)))}. Check which reading belongs to which buffer, and the typing`,
    );
  }
  if (slope < credibleStep.low || slope > credibleStep.high) {
    throw new DomainError(
      "no-answer",
      `The meter shows ${difference(one.read, other.read)} where the buffers differ by ${difference(one.buffer, other.buffer)}. So far off nothing is corrected by arithmetic: clean and adjust the meter, then read again`,
    );
  }
  return corrected;
}
