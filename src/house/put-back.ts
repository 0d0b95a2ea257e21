/** What was taken off a list this long ago can no longer be put back, ms: ten minutes. */
export const PUT_BACK_MS = 600_000;
