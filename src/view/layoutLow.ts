/**
 * A phone on its side, or a desk page at twice its size: one row, the fan between the drive and the calls under the
 * right thumb. Flap lever, thrust and gear take turns in one column; the drive switch never gives up its place.
 */
import { between, GAP, NOWHERE, row, type Drawn, type Layout, type Rect } from './place.js';
import { rollTarget, stripTarget } from './layoutWide.js';

export function low(width: number, height: number, { radius: wished, spread }: Drawn): Layout {
  const side = 12;
  const scale = between(Math.min(width / 844, height / 390) * 0.85, 0.85, 1.1);
  const across = width - 2 * side;
  const headH = 44;
  const footH = 20;
  const top = headH + 2;
  const bottom = height - footH - 2;
  const speedW = between(across * 0.135, 84, 170);
  const handW = between(across * 0.16, 132, 220);
  const driveW = between(across * 0.13, 92, 150);
  const lastW = between(across * 0.15, 96, 190);
  const handX = side + speedW + GAP;
  const driveX = handX + handW + GAP;
  const fanX = driveX + driveW + GAP;
  const lastX = width - side - lastW;

  const figures = 42;
  const hingeY = top + 40;
  const fanW = lastX - GAP - fanX;
  const radius = Math.min(bottom - 38 - hingeY, fanW - 12 - figures, wished ?? Infinity);
  // A fan that does not fill its place can be nearer to the speed or farther from it.
  const hingeX = fanX + 12 + (spread ?? (wished === null ? 0 : 0.5)) * (fanW - 12 - figures - radius);
  const knobH = between((bottom - top) * 0.17, 44, 56);
  const slotTop = top + 22 + knobH + GAP;
  const slot = bottom - slotTop;

  const bankH = between((bottom - top) * 0.22, 62, 76);
  const altitudeH = 46;
  const stripEnd = bottom - bankH - altitudeH - 12;
  const strip = { x: side, y: top, w: speedW, h: stripEnd - top };
  const bank = { x: side, y: bottom - bankH, w: speedW, h: bankH };

  const tabs = { x: handX, y: top, w: handW, h: 44 };
  const area = { x: handX, y: top + 44 + GAP, w: handW, h: bottom - top - 44 - GAP };

  // The call is the largest of the last column and stands where the thumb is; the others are above it.
  const callH = between((bottom - top) * 0.2, 54, 84);
  const callY = bottom - callH;
  const [clear, failed] = row({ x: lastX, y: callY - GAP - 44, w: lastW, h: 44 }, [1, 1], GAP) as [Rect, Rect];
  const moving = { x: lastX, y: callY - 2 * (GAP + 44), w: lastW, h: 44 };
  const armY = top + 22;
  const edgeY = armY + 44 + 6;

  return {
    kind: 'low', width, height, scale, tabbed: true, talkOver: true,
    type: { small: 12 * Math.sqrt(scale / 0.85), label: 13 * (scale / 0.85), value: 17 * (scale / 0.85) },
    head: { x: side, y: 0, w: Math.min(230, across * 0.3), h: headH },
    alerts: { x: side + Math.min(230, across * 0.3) + 8, y: 0, w: across - Math.min(230, across * 0.3) - 164, h: headH },
    tools: { x: width - side - 148, y: 0, w: 148, h: headH },
    foot: { x: side, y: height - footH, w: across, h: footH },
    gauge: { hingeX, hingeY, radius, section: 0 },
    flaps: { x: fanX, y: top, w: fanW, h: bottom - top },
    leadingEdge: { x: lastX, y: edgeY, w: lastW, h: Math.max(30, moving.y - 4 - edgeY) },
    speed: strip, selectSpeed: stripTarget(strip, scale),
    altitude: { x: side, y: stripEnd + 6, w: speedW, h: altitudeH }, bank, roll: rollTarget(bank),
    tabs, talk: area, ...turns(area),
    guard: { x: driveX, y: top + 22, w: driveW, h: knobH },
    arm: { x: lastX, y: armY, w: lastW, h: 44 },
    retract: { x: driveX, y: slotTop, w: driveW, h: slot * 0.32 },
    off: { x: driveX, y: slotTop + slot * 0.32, w: driveW, h: slot * 0.26 },
    extend: { x: driveX, y: slotTop + slot * 0.58, w: driveW, h: slot * 0.42 },
    callMoving: moving, callClear: clear, callFailed: failed,
    call: { x: lastX, y: callY, w: lastW, h: callH },
  };
}

/** Flap lever, thrust and gear in the same place, one at a time. */
export function turns(area: Rect) {
  const { x, y, w, h } = area;
  const stepsY = y + h - 44;
  const holdY = stepsY - GAP - 44;
  const steps = row({ x, y: stepsY, w, h: 44 }, w >= 4 * 44 + 3 * GAP ? [1, 1, 1, 1] : [1, 1], GAP);
  const [hold, around] = row({ x, y: holdY, w, h: 44 }, [1, 1], GAP) as [Rect, Rect];
  const levers = { x, y: y + 20, w, h: holdY - GAP - y - 20 };
  const [left, both, right] = row(levers, [1, 1, 1], 0) as [Rect, Rect, Rect];
  const gearH = between(h * 0.45, 88, 130);
  const silenceH = between(h * 0.26, 48, 64);
  const silenceY = y + 22 + gearH + 14 + 22;
  const [cover, button] = row({ x, y: silenceY, w, h: Math.min(silenceH, y + h - silenceY) }, [1, 1], 0) as [Rect, Rect];
  return {
    lever: area,
    thrustState: { x, y, w, h: 20 }, leftThrust: left, bothThrust: both, rightThrust: right, speedHold: hold, goAround: around,
    speedDown5: steps.length === 4 ? steps[0]! : NOWHERE, speedUp5: steps.length === 4 ? steps[3]! : NOWHERE,
    speedDown: steps[steps.length === 4 ? 1 : 0]!, speedUp: steps[steps.length === 4 ? 2 : 1]!,
    gearState: { x, y, w, h: 22 }, gear: { x, y: y + 22, w, h: gearH }, silenceCover: cover, silence: button,
  };
}
