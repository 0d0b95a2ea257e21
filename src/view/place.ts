/** What a layout says: places in CSS px, measured from the top left of the drill. */
export interface Rect {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

export interface GaugePlace {
  /** The hinge: where both pointers turn, px. */
  readonly hingeX: number;
  readonly hingeY: number;
  /** From the hinge to the tip of a pointer, px. */
  readonly radius: number;
  /** Length of the wing section drawn ahead of the hinge, px; none where there is no room for it. */
  readonly section: number;
}

export interface Layout {
  readonly kind: 'wide' | 'low' | 'tall';
  readonly width: number;
  readonly height: number;
  /** Size of drawn handles and strokes against those of a window of 1280 x 720. */
  readonly scale: number;
  /** Sizes of type, px. */
  readonly type: { readonly small: number; readonly label: number; readonly value: number };
  /** The line of words above everything: place in the app, pause. */
  readonly head: Rect;
  /** The caution below everything. */
  readonly foot: Rect;
  readonly gauge: GaugePlace;
  /** The whole drawing of the gauge with its figures. */
  readonly flaps: Rect;
  readonly leadingEdge: Rect;
  /** Caption, ruled strip and its labels. */
  readonly speed: Rect;
  readonly altitude: Rect;
  readonly thrust: Rect;
  readonly lever: Rect;
  readonly guard: Rect;
  readonly arm: Rect;
  readonly retract: Rect;
  readonly off: Rect;
  readonly extend: Rect;
  readonly call: Rect;
}

/** Smallest side of anything that is touched, CSS px (rules 5.2: the project's own aim above WCAG 2.5.8). */
export const TARGET = 44;
/** 60 mm at 96 px an inch: the pointer is no shorter wherever the window allows (performance notes, canvas). */
export const FULL_RADIUS = (60 / 25.4) * 96;
/** Room kept between a target and its neighbour, px. */
export const GAP = 8;

/** The smallest windows drawn for; a smaller one scrolls. */
export const SMALLEST = { low: { width: 640, height: 340 }, tall: { width: 320, height: 640 } } as const;

/** Everything a hand can touch on the canvas, by name. */
export const TARGETS = ['lever', 'guard', 'arm', 'retract', 'off', 'extend', 'call'] as const;
/** Everything that must not lie over anything else. */
export const PLACES = ['head', 'foot', 'flaps', 'leadingEdge', 'speed', 'altitude', 'thrust', ...TARGETS] as const;

export const between = (value: number, least: number, most: number): number => Math.min(Math.max(value, least), most);
