/** Puts a run together: engine, canvas, hands and sound, each fetched when it is first needed. */
import { bindingsOf } from '../input/keys.js';
import { padsOf } from './switches.js';
import type { Cabin, Flying } from '../pages/house.js';
import { heardOf } from '../sound/heard.js';
import { openSpeaker } from '../sound/speaker.js';
import { flownOf } from './flown.js';
import type { Keeper } from './keeper.js';

/** What a run needs beside its scenario: fetched while the brief is read. */
let kit: ReturnType<typeof fetchKit> | null = null;
const fetchKit = () => Promise.all([import('../run/start.js'), import('../view/stage.js'), import('../input/hands.js'), import('./hosting.js')]);

/** The loudspeaker of whichever run is flown. */
export const speaker = openSpeaker();

/** @param app version of the app, written in the record */
export async function fly(cabin: Cabin, keeping: Keeper, app: string): Promise<Flying> {
  const [flown, [{ startDrill }, { openStage, RENDERER }, { bindHands }, { openToDesks }]] = await Promise.all([flownOf(cabin.of, keeping.book), (kit ??= fetchKit())]);
  const stage = await openStage(cabin.host);
  const { at, sight } = cabin.place(flown.airframe.gauge);
  const running = startDrill({
    ...flown, app, ...(cabin.plan === undefined ? {} : { plan: cabin.plan }),
    device: { isolated: crossOriginIsolated, clockGrainMs: grainMs(), renderer: RENDERER, input: '', ...(cabin.assisted.length > 0 ? { assisted: [...cabin.assisted] } : {}), ...(cabin.timing === null ? {} : { timing: cabin.timing }) },
    gauge: sight,
  });
  const { panel } = running;
  speaker.begin();
  stage.set(at, panel);
  let now: Parameters<typeof stage.draw>[0] | null = null;
  const unwatch = running.onPicture((picture) => {
    // A freeze lets a held switch go; the hand that held it must take it anew.
    if (picture.frozen && now?.frozen !== true) hands.letGo(performance.now());
    now = picture;
    speaker.loudness(cabin.loudness());
    speaker.hear(heardOf(picture));
    stage.draw(picture);
  });
  let desks = 0;
  const pause = (stampMs: number): void => {
    if (now?.frozen === true) return;
    hands.letGo(stampMs);
    running.pause(stampMs);
    cabin.onPause('pause');
  };
  const hands = bindHands(cabin.host, {
    panel, now: () => now, letters: cabin.letters, bindings: () => bindingsOf(cabin.bindings()), pads: () => padsOf(cabin.pads()), act: running.act, pause,
    latched: cabin.latched, cover: running.cover, mute: cabin.mute,
    lose(stampMs, loss) {
      if (now?.frozen === true) return;
      if (desks > 0 && loss === 'focusLost') {
        // The window of a desk on this machine takes the focus: the switch springs back, and the run goes on.
        hands.letGo(stampMs);
        running.letGo(stampMs);
        return;
      }
      running.lose(stampMs, loss);
      cabin.onPause(loss);
    },
  });
  keeping.follow('set' in cabin.of ? { attempt: cabin.of.attempt.id } : { drill: 'drill' in cabin.of ? cabin.of.drill : 'course' in cabin.of ? cabin.of.shipped : null }, running);
  running.onEnd(cabin.onEnd);
  openToDesks(cabin.of, running, {
    keeping,
    onDesks(count) {
      desks = count;
      cabin.onDesks?.(count);
    },
    letGo: () => hands.letGo(performance.now()),
  });
  return {
    panel, onPicture: running.onPicture, pause, resume: running.resume, stop: running.stop,
    place: (to) => stage.set(to, panel), resized: running.resized,
    turn: stage.turn,
    close() {
      unwatch();
      hands.close();
      stage.close();
      speaker.close();
    },
  };
}

/** The smallest step that the page's clock shows, ms. */
function grainMs(): number {
  let grain = 1000;
  for (let round = 0, before = performance.now(); round < 2000; round += 1) {
    const now = performance.now();
    if (now > before) grain = Math.min(grain, now - before);
    before = now;
  }
  return grain;
}

export const warm = (): void => void (kit ??= fetchKit());
