/** A phone on its side, or a desk page at twice its size: one row, the fan in the middle, the call under the right thumb. */
import { between, type Layout } from './place.js';

export function low(width: number, height: number): Layout {
  const side = 12;
  const head = { x: side, y: 0, w: width - 2 * side, h: 44 };
  const foot = { x: side, y: height - 20, w: width - 2 * side, h: 20 };
  const top = head.h + 4;
  const bottom = foot.y - 4;
  const across = width - 2 * side;
  const speedW = between(across * 0.15, 92, 150);
  const leverW = between(across * 0.1, 64, 96);
  const driveW = between(across * 0.14, 104, 124);
  const leverX = side + speedW + 8;
  const driveX = leverX + leverW + 8;
  const fanX = driveX + driveW + 10;
  const lastW = between(across * 0.14, 96, 132);
  const lastX = width - side - lastW;

  // The fan may run under the last column's foot: only its upper right corner is needed for the call.
  const figures = 42;
  const hingeY = top + 44;
  const hingeX = fanX + 12;
  const fanW = lastX - 8 - fanX;
  const radius = Math.min(bottom - 40 - hingeY, fanW - 12 - figures);
  const knobH = between((bottom - top) * 0.17, 44, 56);
  const slotTop = top + 22 + knobH + 8;
  const slot = bottom - slotTop;
  const lastKnob = top + 22;

  return {
    kind: 'low', width, height, scale: 0.85,
    type: { small: 12, label: 13, value: 17 },
    head, foot,
    gauge: { hingeX, hingeY, radius, section: 0 },
    flaps: { x: fanX, y: top, w: fanW, h: bottom - top },
    leadingEdge: { x: lastX, y: lastKnob + knobH + 6, w: lastW, h: 52 },
    speed: { x: side, y: top, w: speedW, h: bottom - 54 - top },
    altitude: { x: side, y: bottom - 46, w: speedW, h: 46 },
    thrust: { x: lastX, y: lastKnob + knobH + 66, w: lastW, h: 46 },
    lever: { x: leverX, y: top, w: leverW, h: bottom - top },
    guard: { x: driveX, y: top + 22, w: driveW, h: knobH },
    arm: { x: lastX, y: lastKnob, w: lastW, h: knobH },
    retract: { x: driveX, y: slotTop, w: driveW, h: slot * 0.32 },
    off: { x: driveX, y: slotTop + slot * 0.32, w: driveW, h: slot * 0.26 },
    extend: { x: driveX, y: slotTop + slot * 0.58, w: driveW, h: slot * 0.42 },
    call: { x: lastX, y: bottom - 64, w: lastW, h: 64 },
  };
}
