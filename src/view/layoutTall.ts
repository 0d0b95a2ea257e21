/** A phone upright: the fan above, the speed and the hand's controls below it, the call at the foot. */
import { between, type Layout } from './place.js';

export function tall(width: number, height: number): Layout {
  const side = 16;
  const across = width - 2 * side;
  const head = { x: side, y: 0, w: across, h: 48 };
  const foot = { x: side, y: height - 24, w: across, h: 24 };
  const top = head.h + 6;
  const bottom = foot.y - 6;
  const figures = 42;
  const callH = 52;
  const callY = bottom - callH;
  const hingeY = top + 46;
  const hingeX = side + 12;
  // The hand's controls need 300 px for six settings of 44 px; the fan takes the rest, and no more than the width.
  const radius = between(callY - 12 - 316 - 52 - hingeY, 90, across - 12 - figures);
  const fanBottom = hingeY + radius + 44;
  const rowY = fanBottom + 8;
  const rowBottom = callY - 10;
  const third = (across - 16) / 3;
  const leverX = side + third + 8;
  const driveX = leverX + third + 8;
  const slotTop = rowY + 22 + 2 * (44 + 8);
  const slot = rowBottom - slotTop;

  return {
    kind: 'tall', width, height, scale: 0.85,
    type: { small: 12, label: 13, value: 18 },
    head, foot,
    gauge: { hingeX, hingeY, radius, section: 0 },
    flaps: { x: side, y: top, w: across, h: fanBottom - top },
    leadingEdge: { x: side, y: rowBottom - 48, w: third, h: 48 },
    speed: { x: side, y: rowY, w: third, h: rowBottom - 158 - rowY },
    altitude: { x: side, y: rowBottom - 152, w: third, h: 46 },
    thrust: { x: side, y: rowBottom - 100, w: third, h: 46 },
    lever: { x: leverX, y: rowY, w: third, h: rowBottom - rowY },
    guard: { x: driveX, y: rowY + 22, w: third, h: 44 },
    arm: { x: driveX, y: rowY + 22 + 52, w: third, h: 44 },
    retract: { x: driveX, y: slotTop, w: third, h: slot * 0.32 },
    off: { x: driveX, y: slotTop + slot * 0.32, w: third, h: slot * 0.26 },
    extend: { x: driveX, y: slotTop + slot * 0.58, w: third, h: slot * 0.42 },
    call: { x: side, y: callY, w: across, h: callH },
  };
}
