/** A phone upright: the fan above, below it speed, the hand's controls in turns and the drive, the calls at the foot. */
import { between, GAP, row, type Drawn, type Layout } from './place.js';
import { turns } from './layoutLow.js';
import { rollTarget, stripTarget } from './layoutWide.js';

export function tall(width: number, height: number, { radius: wished, spread }: Drawn): Layout {
  const side = 16;
  const across = width - 2 * side;
  const headH = 48;
  const footH = 24;
  const alertsH = 26;
  const top = headH + alertsH + 4;
  const bottom = height - footH - 6;
  const figures = 42;
  const callH = 52;
  const callY = bottom - callH;
  const hingeY = top + 40;
  // The hand's controls need 316 px for six settings of 44 px under their tabs; the fan takes the rest, and no more than the width.
  const radius = Math.min(between(callY - 10 - 318 - 50 - hingeY, 90, across - 12 - figures), wished ?? Infinity);
  const hingeX = side + 12 + (spread ?? (wished === null ? 0 : 0.5)) * (across - 12 - figures - radius);
  const fanBottom = hingeY + radius + 42;
  const rowY = fanBottom + 4;
  const rowBottom = callY - 10;
  const handW = between(across * 0.39, 132, 220);
  const [speedW, driveW] = [(across - handW - 2 * GAP) * 0.52, (across - handW - 2 * GAP) * 0.48];
  const handX = side + speedW + GAP;
  const driveX = handX + handW + GAP;
  const knobH = 44;
  const slotTop = rowY + 20 + 2 * (knobH + GAP);
  const slot = rowBottom - slotTop;
  const bankH = 62;
  const stripEnd = rowBottom - bankH - 46 - 12;
  const strip = { x: side, y: rowY, w: speedW, h: stripEnd - rowY };
  const bank = { x: side, y: rowBottom - bankH, w: speedW, h: bankH };
  const area = { x: handX, y: rowY + 44 + GAP, w: handW, h: rowBottom - rowY - 44 - GAP };
  const calls = row({ x: side, y: callY, w: across, h: callH }, [60, 60, 60, 134], GAP);

  return {
    kind: 'tall', width, height, scale: 0.85, tabbed: true, talkOver: true,
    type: { small: 12, label: 13, value: 18 },
    head: { x: side, y: 0, w: across - 152, h: headH },
    tools: { x: width - side - 148, y: 0, w: 148, h: headH },
    alerts: { x: side, y: headH, w: across, h: alertsH },
    foot: { x: side, y: height - footH, w: across, h: footH },
    gauge: { hingeX, hingeY, radius, section: 0 },
    // Above the first quarter of the fan, where no pointer goes, beside the fan's own caption.
    flaps: { x: side, y: top + 26, w: across, h: fanBottom - top - 26 },
    leadingEdge: { x: side + across * 0.4, y: top, w: across * 0.6, h: 24 },
    speed: strip, selectSpeed: stripTarget(strip, 0.85),
    altitude: { x: side, y: stripEnd + 6, w: speedW, h: 46 }, bank, roll: rollTarget(bank),
    tabs: { x: handX, y: rowY, w: handW, h: 44 }, talk: area, ...turns(area),
    guard: { x: driveX, y: rowY + 20, w: driveW, h: knobH },
    arm: { x: driveX, y: rowY + 20 + knobH + GAP, w: driveW, h: knobH },
    retract: { x: driveX, y: slotTop, w: driveW, h: slot * 0.32 },
    off: { x: driveX, y: slotTop + slot * 0.32, w: driveW, h: slot * 0.26 },
    extend: { x: driveX, y: slotTop + slot * 0.58, w: driveW, h: slot * 0.42 },
    callClear: calls[0]!, callFailed: calls[1]!, callMoving: calls[2]!, call: calls[3]!,
  };
}
