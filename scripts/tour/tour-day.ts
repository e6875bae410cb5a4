/** Tuesday 9 March 2027, counted from the demo week's Monday. */
export const tourDay = 8;
