/** What functions, sheets and forms go by where a shop says nothing else. All of it is common practice, no source. */

/** A fall of half a point from the baseline calls for a top-up. */
export const usualDrop = 0.5;

/** So close to the baseline a bath counts as back. */
export const usualTolerance = 0.1;

/** A meter in good order, calibrated, is that sure of a bath's pH, up or down. */
export const meterAccuracy = 0.05;

/** A third of the opening dose first, then mix and read again. */
export const usualHouseShare = 1 / 3;

/** How far a pH meter of a shop may be off, either way. */
export const usualMeterAccuracy = 0.05;

/** One reading may be off one way and the next the other way. */
export const readingsCompared = 2;

/** What comes to more than this many times what was measured is no estimate any more. */
export const farthestEstimate = 10;

/**
 * Drag-out is an estimate and a level is read to a tenth of an inch: carried out may exceed the level's fall by half
 * of it before the figures count as a contradiction.
 */
export const mostCarriedOut = 1.5;
