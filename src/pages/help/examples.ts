/** A small worked example for every kind of fault, trigger and event: what is written, and what it does. A test reads each. */
export interface Example {
  /** As it is written in the file. */
  readonly text: string;
  readonly does: string;
}

/** By the word under `kind`. */
export const FAULT_EXAMPLES: Readonly<Record<string, Example>> = {
  disconnect: { text: '{ "name": "stop", "kind": "disconnect", "side": "right", "when": { "flapDeg": 8 } }', does: 'The right side stays where it is once the drive has passed 8 deg; the left one goes on.' },
  lag: { text: '{ "name": "lag", "kind": "lag", "side": "drawn", "ratio": 0.5, "when": { "heldS": 12 } }', does: 'After 12 s of holding one side, drawn by the seed, moves half as fast as the drive.' },
  jam: { text: '{ "name": "jam", "kind": "jam", "side": "left", "when": { "flapDeg": 11 } }', does: 'The left side sticks at 11 deg. The right one slows while the tube winds up, then the link shears and it runs on.' },
  slip: { text: '{ "name": "slip", "kind": "slip", "side": "right", "ratio": 0.1, "periodS": 5, "onS": 2, "when": { "heldS": 20 } }', does: 'From 20 s of holding the right side hardly moves for two seconds in five: the split opens in steps.' },
  blowback: { text: '{ "name": "blown", "kind": "blowback", "side": "left", "when": { "flapDeg": 13 } }', does: 'At 13 deg the left side is cut and the air pushes it in, even with the hand off.' },
  pointer: { text: '{ "name": "lies", "kind": "pointer", "side": "right", "mode": "bias", "biasDeg": 1.5, "when": { "atS": 30 } }', does: 'At 30 s the right pointer jumps to 1.5 deg more than there is; the side is whole.' },
  dead: { text: '{ "name": "dead", "kind": "dead", "when": { "atS": 0 } }', does: 'The drive never runs. Five seconds of holding with nothing moving are enough to know.' },
  quits: { text: '{ "name": "quits", "kind": "quits", "when": { "heldS": 15 } }', does: 'After 15 s of holding the drive stops for good.' },
  slow: { text: '{ "name": "slow", "kind": "slow", "factor": 0.5, "when": { "atS": 0 } }', does: 'The motor turns at half its speed from the start: a leg takes about twice as long.' },
  runsOn: { text: '{ "name": "sticks", "kind": "runsOn", "when": { "heldS": 10 } }', does: 'Let go behind the tenth second of holding, the drive goes on until the guard is closed or the arm taken off.' },
  leadingEdge: { text: '{ "name": "short", "kind": "leadingEdge", "stopsAt": 0.6, "when": { "atS": 0 } }', does: 'The leading edge goes out to six tenths of its way and no further.' },
};

/** By the key that makes the trigger. */
export const TRIGGER_EXAMPLES: Readonly<Record<string, Example>> = {
  atS: { text: '{ "atS": 30 }', does: '30 s into the run.' },
  flapDeg: { text: '{ "flapDeg": 8, "edge": "rising" }', does: 'When the drive comes to 8 deg on its way out.' },
  speedKt: { text: '{ "speedKt": 160, "edge": "falling" }', does: 'While slowing through 160 kt.' },
  altitudeFt: { text: '{ "altitudeFt": 3000, "edge": "falling" }', does: 'On the way down through 3000 ft above sea level.' },
  edge: { text: '{ "flapDeg": 8, "edge": "falling" }', does: 'When the drive comes to 8 deg on its way in.' },
  heldS: { text: '{ "heldS": 14 }', does: 'When the drive has been held for 14 s in all, pauses left out.' },
  after: { text: '{ "after": "first", "delayS": 2 }', does: '2 s behind the thing named "first".' },
  delayS: { text: '{ "after": "first", "delayS": 0.5 }', does: 'Half a second behind the thing named "first".' },
  hazardPerS: { text: '{ "hazardPerS": 0.05 }', does: 'At any moment of holding, each second with a chance of about one in twenty; mean 20 s, and it may never come.' },
  hazardFromS: { text: '{ "hazardPerS": 0.05, "hazardFromS": 5 }', does: 'The same, but never in the first 5 s of holding.' },
  hazardForS: { text: '{ "hazardPerS": 0.05, "hazardFromS": 5, "hazardForS": 30 }', does: 'Only between 5 and 35 s of holding.' },
  all: { text: '{ "all": [ { "flapDeg": 8, "edge": "rising" }, { "speedKt": 160, "edge": "falling" } ] }', does: 'Once both have happened, in whatever order.' },
  any: { text: '{ "any": [ { "flapDeg": 12 }, { "atS": 60 } ] }', does: 'Whichever comes first.' },
};

/** By the word under `do`. */
export const EVENT_EXAMPLES: Readonly<Record<string, Example>> = {
  descend: { text: '{ "do": "descend", "toFt": 2500, "pathDeg": -3, "when": { "atS": 40 } }', does: 'At 40 s down a three-degree path to 2500 ft.' },
  level: { text: '{ "do": "level", "when": { "altitudeFt": 3500, "edge": "falling" } }', does: 'Levels off on passing 3500 ft.' },
  selectSpeed: { text: '{ "do": "selectSpeed", "speedKt": 150, "when": { "flapDeg": 9 } }', does: 'Selects 150 kt when the drive passes 9 deg.' },
  failEngine: { text: '{ "do": "failEngine", "side": "drawn", "when": { "atS": 20 } }', does: 'One engine, drawn by the seed, stops at 20 s.' },
  message: { text: '{ "do": "message", "from": "cabin", "text": "The cabin is ready.", "when": { "atS": 15 } }', does: 'A text to read, said by the cabin.' },
  callout: { text: '{ "do": "callout", "from": "controller", "text": "Say altitude.", "answers": ["5600 ft", "6500 ft"], "right": "5600 ft", "withinS": 12, "when": { "heldS": 8 } }', does: 'A question with two answers, open for 12 s.' },
  tellGoAround: { text: '{ "do": "tellGoAround", "from": "controller", "text": "Heron four one, go around.", "withinS": 15, "when": { "altitudeFt": 2000, "edge": "falling" } }', does: 'On passing 2000 ft the controller sends the trainee around; 15 s are allowed to begin.' },
  clearHeading: { text: '{ "do": "clearHeading", "from": "controller", "text": "Heron four one, heading 220.", "toDeg": 220, "withinS": 20, "when": { "atS": 12 } }', does: 'A heading to select within 20 s.' },
  clearAltitude: { text: '{ "do": "clearAltitude", "from": "controller", "text": "Heron four one, descend 4000 ft.", "toFt": 4000, "withinS": 20, "when": { "atS": 25 } }', does: 'A height to select within 20 s.' },
  caution: { text: '{ "do": "caution", "text": "cabin height rising", "withinS": 15, "when": { "heldS": 10 } }', does: 'After 10 s of holding a caution comes up; 15 s are allowed to note it.' },
  setGear: { text: '{ "do": "setGear", "to": "down", "when": { "atS": 26 } }', does: 'The gear lever goes down; the horn may fall silent when the gear is locked.' },
  loseMainDrive: { text: '{ "do": "loseMainDrive", "when": { "flapDeg": 9 } }', does: 'The normal drive, working until then, is lost at 9 deg. Needs mainDrive "works".' },
  returnMainDrive: { text: '{ "do": "returnMainDrive", "when": { "atS": 50 } }', does: 'The normal drive is back at 50 s and takes the flaps to the lever, unless the standby drive is armed.' },
  clearFault: { text: '{ "do": "clearFault", "fault": "first", "when": { "after": "first", "delayS": 3 } }', does: 'What the fault "first" does ends 3 s behind it.' },
  freeze: { text: '{ "do": "freeze", "when": { "flapDeg": 10 } }', does: 'The clock stops at 10 deg with the instruments up, to talk about what is shown.' },
};

/** By the place of the key. */
export const KEY_EXAMPLES: Readonly<Record<string, Example>> = {
  'faults.times': { text: '{ "name": "comes", "kind": "lag", "side": "right", "ratio": 0, "when": { "heldS": 5 }, "times": 3, "everyS": 10 }', does: 'The right side stops at 5 s of holding, 10 s and 20 s later: with a clearFault behind each, it comes and goes.' },
  parameters: {
    text: '"parameters": [ { "name": "lagFrom", "default": 8, "min": 6, "max": 12, "step": 0.5, "unit": "deg", "drawn": true } ]',
    does: 'Declares lagFrom. Where it is taken, as in "when": { "flapDeg": { "parameter": "lagFrom" } }, the number is the one you set, else one drawn from 6, 6.5 … 12.',
  },
};
