/** From the ends of a thrust lever's place to the ends of its travel, px: half a handle. Shared by drawing and twin. */
export const THRUST_INSET = 12;
