/** Desks and tablets: four columns under one line of captions, the speed at one end and the flaps at the other. */
import { between, FULL_RADIUS, type Layout } from './place.js';

export function wide(width: number, height: number): Layout {
  const scale = between(Math.min(width / 1280, height / 720), 1, 1.5);
  const side = between(width * 0.04, 36, 160);
  const across = width - 2 * side;
  const gap = between(width * 0.028, 24, 76);
  const speedW = between(across * 0.185, 184, 300);
  const leverW = between(across * 0.13, 140, 210);
  const driveW = between(across * 0.13, 136, 220);
  const leverX = side + speedW + gap;
  const driveX = leverX + leverW + gap;
  const flapsX = driveX + driveW + gap;
  const flapsW = width - side - flapsX;

  const head = { x: side, y: 0, w: across, h: 56 };
  const foot = { x: side, y: height - 44, w: across, h: 44 };
  const top = head.h + between(height * 0.035, 16, 44);
  const bottom = foot.y - between(height * 0.025, 10, 32);
  const caption = 30 * scale;

  // The fan takes what the column leaves beside its figures; the wing section ahead of the hinge takes the rest.
  const callH = 60 * scale;
  const callY = bottom - callH;
  const figures = 50 * scale;
  const hingeY = top + caption + 44 * scale;
  const fanBottom = callY - 20;
  const radius = Math.min(fanBottom - 34 * scale - hingeY, Math.max((flapsW - figures) * 0.67, FULL_RADIUS));
  const hingeX = width - side - figures - radius;
  const section = Math.min(hingeX - flapsX, radius * 0.7);
  const fanX = hingeX - 14;

  const altitudeH = 64 * scale;
  // The lever comes first: six settings of a finger's height each, and its caption.
  const thrustH = Math.min((bottom - top) * 0.36, bottom - top - 18 * scale - 292);
  const leverY = top + thrustH + 18 * scale;
  const knobH = 56 * scale;
  const slotTop = top + caption + 2 * (knobH + 8);
  const slot = bottom - slotTop;

  return {
    kind: 'wide', width, height, scale,
    type: { small: 13 * Math.sqrt(scale), label: 15 * scale, value: 22 * scale },
    head, foot,
    gauge: { hingeX, hingeY, radius, section },
    flaps: { x: fanX, y: top, w: width - side - fanX, h: fanBottom - top },
    leadingEdge: { x: flapsX, y: top, w: fanX - flapsX, h: fanBottom - top },
    speed: { x: side, y: top, w: speedW, h: bottom - altitudeH - 18 * scale - top },
    altitude: { x: side, y: bottom - altitudeH, w: speedW, h: altitudeH },
    thrust: { x: leverX, y: top, w: leverW, h: thrustH },
    lever: { x: leverX, y: leverY, w: leverW, h: bottom - leverY },
    guard: { x: driveX, y: top + caption, w: driveW, h: knobH },
    arm: { x: driveX, y: top + caption + knobH + 8, w: driveW, h: knobH },
    retract: { x: driveX, y: slotTop, w: driveW, h: slot * 0.32 },
    off: { x: driveX, y: slotTop + slot * 0.32, w: driveW, h: slot * 0.26 },
    extend: { x: driveX, y: slotTop + slot * 0.58, w: driveW, h: slot * 0.42 },
    call: { x: width - side - 212 * scale, y: callY, w: 212 * scale, h: callH },
  };
}
