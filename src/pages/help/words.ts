/** What help says beside the keys of files: the words the app uses, how a score comes about, and what the tool is not. */
export interface Said {
  readonly name: string;
  readonly text: string;
}

/** One word a thing, in the order in which they are needed. */
export const WORDS: readonly Said[] = [
  { name: 'standby drive', text: 'The slow electric motor that moves the flaps when the power of the normal drive is lost.' },
  { name: 'guard, arm', text: 'A lid over the switch, and the switch that lets the motor take current. Closed guard: disarmed and off.' },
  { name: 'drive switch', text: 'Extend springs back to off when let go. Retract stays where it is put, on an airframe that says so: then putting it to off is the release.' },
  { name: 'side, travel', text: 'Left or right flap, and its true position in deg.' },
  { name: 'pointer', text: 'What the gauge shows of a side. It can lie.' },
  { name: 'split', text: 'Left against right: shown, on the pointers; true, on the travel.' },
  { name: 'growth', text: 'Change of the shown difference since the onset. This is what a scored run counts, so that pointers that never quite agreed do no harm.' },
  { name: 'fault, onset', text: 'What goes wrong, and the first moment in which it changes the difference while the drive moves.' },
  { name: 'hold, release', text: 'The hand on the switch, and letting go.' },
  { name: 'arrival', text: 'A release within half a degree of the setting that is to be reached.' },
  { name: 'lost release', text: 'The switch let go because the window or the device was lost, not the hand. It voids a scored run.' },
  { name: 'call', text: 'Saying it: split; clear, going on; drive failed; still moving.' },
  { name: 'setting, flap lever', text: 'A flap position with a name, and the lever that asks for it. On the standby drive the lever goes first.' },
  { name: 'leading edge', text: 'In, moving, out. The first touch sends it out, and nothing brings it back.' },
  { name: 'reference, manoeuvre, limit speed', text: 'For landing; for turning with what is out; never above.' },
  { name: 'speed hold', text: 'The thrust levers follow the selected speed.' },
  { name: 'gear horn, silence', text: 'Sounds with flaps or thrust as for landing and the gear not locked; silenced only where that is allowed.' },
  { name: 'roll authority used', text: 'Part of the full roll control that holds the wings level against the true split, in %.' },
  { name: 'motor heat, duty', text: 'How warm the motor is, where 1 opens its cut-out, and how long it may run.' },
  { name: 'quiet run', text: 'A run without onset.' },
  { name: 'scenario, set, course', text: 'One run as a file; many short runs of one scenario, to measure; drills and sets in order.' },
  { name: 'record', text: 'The file of a run: what hands did, from which everything is replayed.' },
  { name: 'trainee', text: 'Whoever flies. A scripted one flies without a page.' },
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
  { name: 'Completed, lost, time up', text: 'Without recognition a release is a pause and the call decides: the task done or a split rightly called; control lost; out of time.' },
];

export const IS_NOT: readonly Said[] = [
  { name: 'A practice aid', text: 'The airframes are invented and simplified. What is practised here earns no credit of any kind.' },
  { name: 'Your own procedures come first', text: 'Your operator’s approved manuals, procedures and licensed instruction come before anything said here. Where they differ, they are right.' },
  { name: 'No detector', text: 'Nothing here tells whether a real flap is safe, and no figure from here belongs in a flight plan.' },
  { name: 'No proof of identity', text: 'The digest of a record shows damage and careless edits. It is no signature: a forger who replays and digests anew is not caught.' },
  { name: 'A model of few things', text: 'No wind in flight, no turbulence beyond a small disturbance in roll, no stall, no failure but those named under faults.' },
];
