import { checkWithin } from "../limits/domain.ts";
import { DomainError } from "../limits/domain-error.ts";
import { readablePh } from "../limits/domains.ts";
import type { PH } from "../units/quantity.ts";
import { ph } from "../units/quantity.ts";

/** A buffer and what the meter read in it. */
export interface BufferReading {
  readonly buffer: PH;
  readonly read: PH;
}

/**
 * What a meter would have read had it been adjusted on two buffers: the straight line through both.
 *
 * @throws OutOfRange for a value outside its domain, the corrected reading included
 * @throws DomainError where the meter read both alike, or the lower buffer higher
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
  checkWithin("corrected reading", corrected, readablePh);
  return corrected;
}
