/** The instruments of a replay, side by side in a width: speed, thrust, standby drive and flaps, nothing to touch. */
import { between, CAPTION, NOWHERE, row, TARGETS, AREAS, type Area, type Layout, type Rect, type Target } from './place.js';
import { stripTarget } from './layoutWide.js';

const HEIGHT = 330;
/** Below these widths the drive, and then the thrust, have no room beside the fan; the readings tell of them. */
const WITH_DRIVE = 900;
const WITH_THRUST = 660;
/** Room of the figures beyond the tips, px. */
const FIGURES = 50;
const ALERTS_H = 38;

const NOTHING = Object.fromEntries([...TARGETS, ...AREAS].map((name) => [name, NOWHERE])) as Record<Target | Area, Rect>;

/** @param width of the column it stands in, px; below 280 it is drawn for 280 */
export function replayLayout(width: number): Layout {
  return width >= WITH_THRUST ? beside(width) : small(Math.max(width, 280));
}

function beside(width: number): Layout {
  const whole = width >= WITH_DRIVE;
  const gap = between(width * 0.034, 20, 56);
  const foot = HEIGHT - ALERTS_H;
  const speed = { x: 0, y: 0, w: between(width * 0.18, 176, 230), h: HEIGHT };
  const thrust = { x: speed.x + speed.w + gap, y: 0, w: 160, h: foot };
  const drive = { x: thrust.x + thrust.w + gap, y: 0, w: whole ? between(width * 0.12, 126, 160) : 0, h: foot };
  const flapsX = whole ? drive.x + drive.w + gap : drive.x;
  const hingeY = CAPTION + 34;
  const radius = Math.min(HEIGHT - 54 - hingeY, (width - flapsX - FIGURES) * 0.72);
  const hingeX = width - FIGURES - radius;
  const fanX = hingeX - 14;
  const [left, both, right] = row({ x: thrust.x + 26, y: CAPTION, w: 132, h: foot - CAPTION }, [1, 1, 1], 0) as [Rect, Rect, Rect];
  const pit = { y: CAPTION + 2 * 44 + 8, h: foot - CAPTION - 2 * 44 - 8 };
  return {
    ...NOTHING, ...common(width, 1), kind: 'wide', tabbed: false,
    type: { small: 13, label: 15, value: 22 },
    gauge: { hingeX, hingeY, radius, section: Math.min(hingeX - flapsX, radius * 0.7) },
    flaps: { x: fanX, y: 0, w: width - fanX, h: HEIGHT }, leadingEdge: { x: flapsX, y: 0, w: fanX - flapsX, h: HEIGHT },
    speed, selectSpeed: stripTarget(speed, 1),
    thrustState: { x: thrust.x, y: 0, w: thrust.w, h: CAPTION }, leftThrust: left, bothThrust: both, rightThrust: right,
    ...(whole ? {
      guard: { x: drive.x, y: CAPTION, w: drive.w, h: 44 }, arm: { x: drive.x, y: CAPTION + 44, w: drive.w, h: 44 },
      retract: { x: drive.x, y: pit.y, w: drive.w, h: pit.h * 0.32 }, off: { x: drive.x, y: pit.y + pit.h * 0.32, w: drive.w, h: pit.h * 0.26 },
      extend: { x: drive.x, y: pit.y + pit.h * 0.58, w: drive.w, h: pit.h * 0.42 },
    } : {}),
    alerts: { x: thrust.x, y: foot + 4, w: flapsX - gap / 2 - thrust.x, h: ALERTS_H - 4 },
  };
}

/** A phone: the fan and the speed, the alerts under them. */
function small(width: number): Layout {
  const foot = HEIGHT - ALERTS_H;
  const speed = { x: 0, y: 0, w: 84, h: foot };
  const fanX = speed.w + 16;
  const hingeX = fanX + 12;
  const hingeY = 46;
  const radius = Math.min(foot - 46 - hingeY, width - hingeX - 42);
  return {
    ...NOTHING, ...common(width, 0.85), kind: 'low', tabbed: true,
    type: { small: 12, label: 13, value: 17 },
    gauge: { hingeX, hingeY, radius, section: 0 },
    flaps: { x: fanX, y: 0, w: width - fanX, h: foot },
    speed, selectSpeed: stripTarget(speed, 0.85),
    alerts: { x: 0, y: foot + 4, w: width, h: ALERTS_H - 4 },
  };
}

const common = (width: number, scale: number) => ({ width, height: HEIGHT, scale, talkOver: false });
