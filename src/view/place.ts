/** What a layout says: places in CSS px, measured from the top left of the drill. */
export interface Rect {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

/** The fan of the flap pointers; lengths in px. */
export interface GaugePlace {
  /** The hinge: where both pointers turn, px. */
  readonly hingeX: number;
  readonly hingeY: number;
  /** From the hinge to the tip of a pointer, px. */
  readonly radius: number;
  /** Length of the wing section drawn ahead of the hinge, px; none where there is no room for it. */
  readonly section: number;
}

/** Everything a hand can touch on the canvas, by name. */
export const TARGETS = [
  'gear', 'leftThrust', 'bothThrust', 'rightThrust', 'speedHold', 'goAround', 'lever', 'selectSpeed', 'speedDown5', 'speedDown', 'speedUp', 'speedUp5', 'roll',
  'guard', 'arm', 'retract', 'off', 'extend', 'call', 'callClear', 'callFailed', 'callMoving', 'silenceCover', 'silence',
] as const;
export type Target = (typeof TARGETS)[number];

/** What is drawn and not touched. `talk` is where words of the outside and their answers stand. */
export const AREAS = ['head', 'tools', 'alerts', 'foot', 'flaps', 'leadingEdge', 'speed', 'altitude', 'bank', 'gearState', 'thrustState', 'talk', 'tabs'] as const;
export type Area = (typeof AREAS)[number];

/** Targets that are a part of a reading: the bug on its strip, the control under its mark. */
export const INSIDE: Readonly<Partial<Record<Target, Area>>> = { selectSpeed: 'speed', roll: 'bank' };

/** Where a window has no room for all of the hand's controls, they take turns in one place. The drive, the gauge, the speed and the calls never do. */
export const TABS = ['flaps', 'thrust', 'gear'] as const;
export type Tab = (typeof TABS)[number];

/** Under which tab a place is; what has none is always up. */
export const TAB_OF: Readonly<Partial<Record<Target | Area, Tab>>> = {
  lever: 'flaps',
  leftThrust: 'thrust', bothThrust: 'thrust', rightThrust: 'thrust', thrustState: 'thrust', speedHold: 'thrust', goAround: 'thrust',
  speedDown5: 'thrust', speedDown: 'thrust', speedUp: 'thrust', speedUp5: 'thrust',
  gear: 'gear', gearState: 'gear', silenceCover: 'gear', silence: 'gear',
};

/** Every place by name, px; `NOWHERE` for what this window has no room for. */
export interface Layout extends Readonly<Record<Target | Area, Rect>> {
  readonly kind: 'wide' | 'low' | 'tall';
  readonly width: number;
  readonly height: number;
  /** Size of drawn handles and strokes against those of a window of 1280 x 720. */
  readonly scale: number;
  /** Sizes of type, px. */
  readonly type: { readonly small: number; readonly label: number; readonly value: number };
  readonly gauge: GaugePlace;
  /** The hand's controls take turns. */
  readonly tabbed: boolean;
  /** What is said to the trainee stands over the hand's controls, not beside them. */
  readonly talkOver: boolean;
}

/** Whether something is there while a tab is turned up. */
export const isUp = (at: Layout, tab: Tab, what: Target | Area): boolean => !at.tabbed || (TAB_OF[what] ?? tab) === tab;

/** Smallest side of anything that is touched, CSS px (rules 5.2: the project's own aim above WCAG 2.5.8). */
export const TARGET = 44;
/** 60 mm at 96 px an inch: the pointer is no shorter wherever the window allows (performance notes, canvas). */
export const FULL_RADIUS = (60 / 25.4) * 96;
/** Room kept between targets that are not parts of one control, px. */
export const GAP = 8;
/** Height of the line above every instrument, px. */
export const CAPTION = 26;

/** The smallest windows drawn for; a smaller one scrolls. */
export const SMALLEST = { low: { width: 640, height: 340 }, tall: { width: 344, height: 640 } } as const;

/** The shortest pointer that can be read, px: a truer one would lie under its own letter. */
export const LEAST_RADIUS = 80;

/** What is wished of a layout; it gives what the window has room for. */
export interface Wish {
  /** Length of a pointer, px; null: as long as the window has room for. */
  readonly radius: number | null;
  /** How far the eye goes between speed and flaps, as `apartPx` measures it, px; null: as the layout has it. */
  readonly apart: number | null;
}
export const NO_WISH: Wish = { radius: null, apart: null };

/** How a layout is drawn out: the wished pointer, and from nearest (0) to farthest (1) between speed and flaps; null: its own way. */
export interface Drawn {
  readonly radius: number | null;
  readonly spread: number | null;
}

/** From the middle of the speed's rule to the middle of the fan, px. */
export function apartPx({ selectSpeed, gauge: { hingeX, hingeY, radius } }: Layout): number {
  return Math.hypot(hingeX + radius / 2 - selectSpeed.x - selectSpeed.w / 2, hingeY + radius / 2 - selectSpeed.y - selectSpeed.h / 2);
}

/** A place of no size: what this layout does not have. */
export const NOWHERE: Rect = { x: 0, y: 0, w: 0, h: 0 };

export const between = (value: number, least: number, most: number): number => Math.min(Math.max(value, least), most);

/** A row of places from left to right with gaps between, by their shares of the width. */
export function row(place: Rect, shares: readonly number[], gap: number): Rect[] {
  const free = place.w - gap * (shares.length - 1);
  const all = shares.reduce((sum, share) => sum + share, 0);
  let x = place.x;
  return shares.map((share) => {
    const one = { x, y: place.y, w: (free * share) / all, h: place.h };
    x += one.w + gap;
    return one;
  });
}
