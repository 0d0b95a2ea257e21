/**
 * Desks and tablets: four columns, the speed at one end and the flaps at the other, between them the hand's controls in
 * the order of a flight deck (gear, thrust, flap lever from front to back) and the standby drive. Words of the outside
 * stand at the foot on the side of the speed, the calls at the foot of the flaps; in a short window the words stand over
 * the hand's column while they last.
 */
import { between, CAPTION, FULL_RADIUS, GAP, row, type Drawn, type Layout, type Rect } from './place.js';

/** Ahead of the hinge stays room for the words of the leading edge; under the fan, for four calls. */
const AHEAD = 70;
const CALLS_W = 320;
/** Columns stand no nearer to each other, and the outer ones no nearer to the window's edge. */
const [LEAST_GAP, LEAST_SIDE] = [20, 20];

export function wide(width: number, height: number, { radius: wished, spread }: Drawn): Layout {
  const scale = between(Math.min(width / 1280, height / 720), 1, 1.5);
  const figures = 49 * scale;
  const { side, across, speedW, handX, handW, driveX, driveW, flapsX, flapsW } = columnsOf(width, figures + (wished ?? FULL_RADIUS) + AHEAD, spread);

  const headH = between(height * 0.068, 44, 64);
  const footH = between(height * 0.036, 22, 40);
  const top = headH + between(height * 0.018, 8, 30);
  const bottom = height - footH - between(height * 0.008, 4, 16);
  const caption = CAPTION * scale;

  // The foot of the columns: what is said to the trainee, and what the trainee calls.
  const short = height < 700;
  const talkH = between(height * 0.078, 44, 92);
  const talkY = bottom - talkH;
  const columnEnd = short ? bottom : talkY - 14 * scale;
  const callH = between(height * 0.083, 52, 84);
  const callY = bottom - callH;

  const speedFoot = between(76 * scale, 70, 110);
  const buttonH = 44 * Math.min(scale, 1.2);
  const stepsY = columnEnd - speedFoot - 12 * scale - buttonH;
  const stripEnd = stepsY - 8 * scale;

  const hand = handColumn({ x: handX, y: top, w: handW, h: columnEnd - top }, caption, scale);
  const drive = driveColumn({ x: driveX, y: top, w: driveW, h: columnEnd - top }, caption, scale);

  // The fan takes what the column leaves beside its figures; the wing section ahead of the hinge takes the rest.
  const hingeY = top + caption + 40 * scale;
  const fanBottom = callY - 12;
  const longest = wished === null ? Math.max((flapsW - figures) * 0.67, FULL_RADIUS) : Math.min(wished, flapsW - figures - AHEAD);
  const radius = Math.min(fanBottom - 34 * scale - hingeY, longest);
  const hingeX = width - side - figures - radius;
  const fanX = hingeX - 14;
  const callW = Math.min(flapsW, 500 * scale);
  const calls = row({ x: width - side - callW, y: callY, w: callW, h: callH }, [62, 62, 62, 104], GAP);
  const lowCall = (place: Rect): Rect => ({ ...place, y: bottom - Math.max(44, callH - 9), h: Math.max(44, callH - 9) });
  const steps = row({ x: side, y: stepsY, w: speedW, h: buttonH }, [1, 1, 1, 1], GAP);
  const [altitude, bank] = row({ x: side, y: columnEnd - speedFoot, w: speedW, h: speedFoot }, [8, 11], 14) as [Rect, Rect];
  const strip = { x: side, y: top, w: speedW, h: stripEnd - top };

  return {
    kind: 'wide', width, height, scale, tabbed: false, talkOver: short,
    type: { small: 13 * Math.sqrt(scale), label: 15 * scale, value: 22 * scale },
    head: { x: side, y: 0, w: handX - side - 8, h: headH },
    alerts: { x: handX, y: 0, w: width - side - 190 - handX, h: headH },
    tools: { x: width - side - 180, y: 0, w: 180, h: headH },
    foot: { x: side, y: height - footH, w: across, h: footH },
    gauge: { hingeX, hingeY, radius, section: Math.min(hingeX - flapsX, radius * 0.7) },
    flaps: { x: fanX, y: top, w: width - side - fanX, h: fanBottom - top },
    leadingEdge: { x: flapsX, y: top, w: fanX - flapsX, h: fanBottom - top },
    speed: strip, selectSpeed: stripTarget(strip, scale),
    speedDown5: steps[0]!, speedDown: steps[1]!, speedUp: steps[2]!, speedUp5: steps[3]!,
    altitude, bank, roll: rollTarget(bank),
    ...hand, ...drive,
    callClear: lowCall(calls[0]!), callFailed: lowCall(calls[1]!), callMoving: lowCall(calls[2]!), call: calls[3]!,
    talk: short ? { x: handX, y: top, w: handW, h: columnEnd - top } : { x: side, y: talkY, w: Math.min(driveX + driveW, calls[0]!.x - 24) - side, h: talkH },
    tabs: { x: side, y: height, w: 0, h: 0 },
  };
}

/**
 * Speed and flaps are drawn out and together by the margins of the window; gaps give way before the fan does.
 * @param fan width that the flaps need, px
 */
function columnsOf(width: number, fan: number, spread: Drawn['spread']) {
  const own = width - 2 * between(width * 0.035, 36, 160);
  const speedW = between(own * 0.18, 200, 300);
  const handW = between(own * 0.172, 202, 330);
  const driveW = between(own * 0.118, 120, 210);
  const columns = speedW + handW + driveW;
  const need = Math.max(fan, CALLS_W);
  const least = Math.min(own, columns + 3 * LEAST_GAP + need);
  const across = spread === null ? own : least + spread * (width - 2 * LEAST_SIDE - least);
  const side = (width - across) / 2;
  const gap = between((across - columns - need) / 3, LEAST_GAP, between((width - 1000) * 0.056 + 20, 20, 76));
  const handX = side + speedW + gap;
  const driveX = handX + handW + gap;
  const flapsX = driveX + driveW + gap;
  return { side, across, speedW, handX, handW, driveX, driveW, flapsX, flapsW: width - side - flapsX };
}

/** Guard and arming above the switch with its three places. */
function driveColumn({ x, y, w, h }: Rect, caption: number, scale: number) {
  const knobH = between(56 * scale, 48, 84);
  const armY = y + caption + knobH + GAP;
  const slotY = armY + knobH + GAP;
  const slotH = y + h - slotY;
  return {
    guard: { x, y: y + caption, w, h: knobH }, arm: { x, y: armY, w, h: knobH },
    retract: { x, y: slotY, w, h: slotH * 0.32 }, off: { x, y: slotY + slotH * 0.32, w, h: slotH * 0.26 }, extend: { x, y: slotY + slotH * 0.58, w, h: slotH * 0.42 },
  };
}

/** Gear, thrust and flap lever under one another. The flap lever comes first: six settings of a finger's height each. */
function handColumn({ x, y, w, h }: Rect, caption: number, scale: number) {
  const gap = between(h * 0.026, 8, 22);
  const gearH = between(h * 0.16, 88, 130);
  const leverH = between(h - 3 * caption - 2 * gap - gearH - 96, 216, 264 * scale);
  const thrustY = y + caption + gearH + gap;
  const leverY = y + h - leverH;
  const thrustH = leverY - caption - gap - thrustY - caption;
  const [gear, silence] = row({ x, y: y + caption, w, h: gearH }, [10, 11], 12) as [Rect, Rect];
  const [cover, button] = row(silence, [1, 1], 0) as [Rect, Rect];
  const levers = { x: x + 18 * scale, y: thrustY + caption, w: 132 * scale, h: thrustH };
  const [left, both, right] = row(levers, [1, 1, 1], 0) as [Rect, Rect, Rect];
  const beside = { x: levers.x + levers.w + GAP, w: x + w - levers.x - levers.w - GAP };
  return {
    gear, gearState: { x, y, w: gear.w, h: caption }, silenceCover: cover, silence: button,
    thrustState: { x, y: thrustY, w, h: caption },
    leftThrust: left, bothThrust: both, rightThrust: right,
    speedHold: { ...beside, y: levers.y, h: (thrustH - GAP) / 2 }, goAround: { ...beside, y: levers.y + (thrustH + GAP) / 2, h: (thrustH - GAP) / 2 },
    lever: { x, y: leverY, w, h: leverH },
  };
}

/** The rule of the strip with a finger's width about it. */
export const stripTarget = ({ x, y, w, h }: Rect, scale: number): Rect => ({ x, y: y + CAPTION, w: Math.min(w, Math.max(44, 84 * scale)), h: h - CAPTION });

/** The lower part of the bank's drawing, never lower than a finger. */
export const rollTarget = ({ x, y, w, h }: Rect): Rect => ({ x, y: y + h - Math.max(44, h * 0.45), w, h: Math.max(44, h * 0.45) });
