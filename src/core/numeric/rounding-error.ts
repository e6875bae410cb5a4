/** Figures of two or three decimals must not miss a limit by the rounding of a double. */
export const roundingError = 1e-9;
