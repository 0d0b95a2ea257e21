/** Rates that the picture of a practice shows, deg/s: those a practice goes to. */
export const RATES = { lowest: 0.06, highest: 0.7 } as const;
