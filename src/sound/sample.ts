/** A sound of a run on its own, for a moment: how loud it is, and which one it is. */
import { PLANS, type SoundName } from './plan.js';
import { openSpeaker, type Speaker } from './speaker.js';

/** Long enough to know it, and under the three seconds of WCAG 2.2, 1.4.2. */
const LASTS_S = 2;
const STEP_MS = 50;

let last: { speaker: Speaker; timer: ReturnType<typeof setInterval> } | null = null;

/** Ends what is being tried. */
export function endSample(): void {
  if (last === null) return;
  clearInterval(last.timer);
  last.speaker.close();
  last = null;
}

/** @param loudness asked again while it sounds */
export function playSample(name: SoundName, loudness: () => number): void {
  endSample();
  const speaker = openSpeaker();
  const { cycles, cycleS } = PLANS[name];
  let steps = Math.round((1000 * (cycles === null ? LASTS_S : cycles * cycleS)) / STEP_MS) + 4;
  speaker.loudness(loudness());
  speaker.unlock();
  speaker.hear({ horn: false, autopilotOff: false });
  const timer = setInterval(() => {
    steps -= 1;
    if (steps < 0) return endSample();
    speaker.loudness(loudness());
    speaker.hear({ horn: name === 'horn', autopilotOff: name === 'autopilotOff' });
  }, STEP_MS);
  last = { speaker, timer };
}
