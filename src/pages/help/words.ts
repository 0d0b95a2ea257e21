/** What help says beside the keys of files: the words the app uses with their units, how a score comes about, and what the tool is not. */
export interface Said {
  readonly name: string;
  readonly text: string;
  /** Where it is done. */
  readonly href?: string;
}

/** One word a thing, in the order in which they are needed. */
export const WORDS: readonly Said[] = [
  { name: 'standby drive', text: 'The slow electric motor that moves the flaps when the power of the normal drive is lost.' },
  { name: 'guard, arm', text: 'A lid over the switch, and the switch that lets the motor take current. Closed guard: disarmed and off.' },
  { name: 'drive switch', text: 'Extend springs back to off when let go. Retract stays where it is put, on an airframe that says so: then putting it to off is the release.' },
  { name: 'side, travel', text: 'Left or right flap, and its true position, in deg of flap.' },
  { name: 'pointer', text: 'What the gauge shows of a side, in deg of flap. It can lie.' },
  { name: 'split', text: 'Left against right, in deg: shown, on the pointers; true, on the travel.' },
  { name: 'growth', text: 'Change of the shown difference since the onset, in deg. This is what a scored run counts, so that pointers that never quite agreed do no harm.' },
  { name: 'limit of growth', text: 'The growth, in deg, from which a release is late. The airframe has one; a scenario or a set may have its own.' },
  { name: 'rigging, wander', text: 'Pointers of whole sides are a little apart from the start, and creep a little. Neither is a split.' },
  { name: 'fault, onset', text: 'What goes wrong, and the first moment in which it changes the difference while the drive moves.' },
  { name: 'hazard', text: 'The chance a second, in 1/s, that a fault comes while the drive is held; equal at every moment, so that waiting tells nothing.' },
  { name: 'blow-back', text: 'A side that is cut with no brake behind it: the air pushes it in, drive held or not.' },
  { name: 'hold, release', text: 'The hand on the switch, and letting go.' },
  { name: 'coast', text: 'What the drive still moves behind a release, until its contactor has opened and the motor has stopped.' },
  { name: 'arrival', text: 'A release within half a degree of the setting that is to be reached.' },
  { name: 'lost release', text: 'The switch let go because the window or the device was lost, not the hand. It voids a scored run.' },
  { name: 'call', text: 'Saying it: split; clear, going on; drive failed; still moving.' },
  { name: 'asymmetry list', text: 'The lines that are read behind a split that was called, each with its answer, where the scenario asks for them.' },
  { name: 'setting, flap lever', text: 'A flap position with a name, and the lever that asks for it. On the standby drive the lever goes first.' },
  { name: 'leading edge', text: 'In, moving, out. The first touch sends it out, and nothing brings it back.' },
  { name: 'reference, manoeuvre, limit speed', text: 'For landing; for turning with what is out; never above. In kt, calibrated airspeed.' },
  { name: 'speed hold', text: 'The thrust levers follow the selected speed.' },
  { name: 'thrust-lever angle (TLA)', text: 'Where a thrust lever stands, in deg from idle stop forward. The gear horn looks at it.' },
  { name: 'gear horn, silence', text: 'Sounds with flaps or thrust as for landing and the gear not locked; silenced only where that is allowed.' },
  { name: 'go-around', text: 'Leaving the approach: thrust, climb, then gear, and no flap switch below the safe height.' },
  { name: 'roll authority used', text: 'Part of the full roll control that holds the wings level against the true split, in %. At 100 there is none left.' },
  { name: 'motor heat, duty', text: 'How warm the motor is, where 1 (100 %) opens its cut-out, and how long it may run, in s, before it must rest.' },
  { name: 'quiet run', text: 'A run without onset.' },
  { name: 'run, leg', text: 'One flight of a scenario; and the seconds of holding that a run of a set asks for.' },
  { name: 'pause', text: 'The clock stands and the instruments are blank. A scored run is void by it.' },
  { name: 'gear', text: 'Up, moving, locked down.' },
  { name: 'stall warning', text: 'The lowest mark of the speed strip, for what is out.' },
  { name: 'estimate', text: 'What flown sets say of one person. Runs by a script or under a desk enter none.' },
  { name: 'remark, grade', text: 'An instructor’s words at a moment of a run, and the instructor’s own mark behind it, from 1 to 5, each with what it means. The machine’s findings stand beside it; neither is worked out from the other.' },
  { name: 'scenario, set, course', text: 'One run as a file; many short runs of one scenario, to measure; drills and sets in order.' },
  { name: 'step, gate', text: 'A drill or a set of a course, and what must be shown there before the next one is proposed. A met gate stays met.' },
  { name: 'airframe', text: 'The file with every number of an aeroplane. Those that come with the app are invented.' },
  { name: 'seed', text: 'The number from which all dice of a run are thrown. With the same one, everything but the hand comes again.' },
  { name: 'tick', text: 'A hundredth of a second: the step of the model and the grid of every time in a file.' },
  { name: 'record', text: 'The file of a run: what hands did, from which everything is replayed.' },
  { name: 'trainee', text: 'Whoever flies. A scripted one flies without a page.' },
  { name: '95 % interval', text: 'Where the true figure probably lies: made so that it holds it in 95 of 100 such measurements. A wide one says: fly more.' },
];

export const SCORES: readonly Said[] = [
  { name: 'Three splits, never mixed', text: 'At release: on the pointers, between the two ticks about the moment of letting go; this is scored. Final: the true one, when the sides have stopped, since the drive coasts for a moment. Roll authority used comes from the final one.' },
  { name: 'Caught', text: 'Let go behind onset, with growth below the limit.' },
  { name: 'Late', text: 'Let go behind onset, with growth at or above the limit.' },
  { name: 'Missed', text: 'Never let go though the growth came to the limit, or arrived with the pointers a degree apart and no call within 5 s.' },
  { name: 'False release', text: 'Let go without an onset, sooner than 0.15 s behind it (no hand is that quick), or with growth below what can be seen (seenDeg). In the aeroplane this is free; in a measuring run it is counted.' },
  { name: 'Held', text: 'A quiet run held to its end, or to the setting.' },
  { name: 'Undecided', text: 'The run ended before the split could reach the limit. It counts for nobody.' },
  { name: 'Void', text: 'Stopped, paused, or disturbed by something other than the hand. It counts for nobody.' },
  { name: 'Completed, control lost, time up', text: 'Without recognition a release is a pause and the call decides: the task done or a split rightly called; control lost; out of time.' },
  { name: 'Passed, standard met', text: 'A good outcome (caught, held, completed) with no item of the procedure broken. Void and undecided runs neither pass nor fail.' },
  { name: 'Items of the procedure', text: 'What else a hand should do: lever before drive, speed inside its limit, both pointers there, the split called, the switch left alone afterwards, and more where the scenario asks. Each stands in the debrief with its proof.' },
];

export const IS_NOT: readonly Said[] = [
  { name: 'A practice aid', text: 'The airframes are invented and simplified. What is practised here earns no credit of any kind.' },
  { name: 'Your own procedures come first', text: 'Your operator’s approved manuals, procedures and licensed instruction come before anything said here. Where they differ, they are right.' },
  { name: 'No detector', text: 'Nothing here tells whether a real flap is safe, and no figure from here belongs in a flight plan.' },
  { name: 'No proof of identity', text: 'The digest of a record shows damage and careless edits. It is no signature: a forger who replays and digests anew is not caught.' },
  { name: 'A model of few things', text: 'No wind in flight, no turbulence beyond a small disturbance in roll, no stall, no failure but those named under faults.' },
];
