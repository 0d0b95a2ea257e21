/** How fine the page's clock is. Browsers coarsen it unless the page is isolated. */

export interface Clock {
  readonly isolated: boolean;
  /** Grain of time stamps, ms: 0.005 isolated, 0.1 otherwise, as measured in Chromium; other engines are coarser. */
  readonly grainMs: number;
}

/** The clock of a page. @param isolated `crossOriginIsolated` of the window */
export const clockOf = (isolated: boolean): Clock => ({ isolated, grainMs: isolated ? 0.005 : 0.1 });
