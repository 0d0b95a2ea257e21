/** Starts a drill: one stream of frames and inputs, scanned into sessions, drawn once a frame. */
import { scan, Subject, Subscription, type Observable } from 'rxjs';
import { ready } from '../../sim/files/index.js';
import { expand, isOfFlying } from '../../sim/index.js';
import { frames } from '../clock/frames.js';
import type { DrillOptions, Hand, RunningDrill } from './drill.js';
import { desked } from './desked.js';
import type { Entry } from './entry.js';
import { enterLive, type Live } from './live.js';
import { panelOf } from './picture.js';
import { draftOf, recordOf, settingOf } from './record.js';
import { openShowing } from './showing.js';

/**
 * Starts the clock at the first frame.
 * @param frame$ stamps of animation frames, ms of the page's clock; the page's own unless a test brings some
 */
export function startDrill(options: DrillOptions, frame$: Observable<number> = frames()): RunningDrill {
  const scenario = ready(options.scenario, options.airframe);
  const first = expand(scenario, options.airframe, options.seed);
  const showing = openShowing(scenario, options.airframe);
  const watchers = new Set<Parameters<RunningDrill['onSession']>[0]>();
  const ends = new Set<Parameters<RunningDrill['onEnd']>[0]>();
  const hands = new Set<Hand>();
  let resized = false;
  let joined = false;
  const input$ = new Subject<Entry>();
  const flying = new Subscription();
  let record: ReturnType<typeof recordOf> | null = null;
  let now: Live | null = null;

  const see = (live: Live | null): void => {
    now = live;
    if (live === null) return;
    const { session } = live;
    showing.show(live);
    for (const watch of watchers) watch(session);
    if (session.over === null) return;
    flying.unsubscribe();
    record = recordOf(session, options, hands, resized, joined);
    for (const end of ends) end(record);
  };
  flying.add(input$.pipe(scan((live: Live | null, entry: Entry) => enterLive(live, entry, first), null)).subscribe(see));
  flying.add(frame$.subscribe((stampMs) => { input$.next({ what: 'frame', stampMs }); }));

  const put = (entry: Entry): void => {
    if (entry.what === 'act') hands.add(entry.hand);
    input$.next(entry);
  };
  return {
    panel: panelOf(options.airframe, first),
    setting: settingOf(options),
    draft: () => (now === null || record !== null ? null : draftOf(now.session, hands, resized, joined)),
    onPicture: showing.on,
    onEnd(end) {
      ends.add(end);
      if (record !== null) end(record);
    },
    // What belongs to whoever flies is not filed: the page says whose it is.
    act: (stampMs, act, hand) => { if (scenario.role !== 'driving' || !isOfFlying(act)) put({ what: 'act', stampMs, act, hand }); },
    cover: (stampMs) => { put({ what: 'cover', stampMs }); },
    lose: (stampMs, loss) => { put({ what: loss, stampMs }); },
    pause: (stampMs) => { put({ what: 'pause', stampMs }); },
    resume: (stampMs) => { put({ what: 'resume', stampMs }); },
    resized: () => { resized = true; },
    join: () => { joined = true; },
    desk(stampMs, act, by) {
      if (now === null) return { tick: null, refused: 'The run has not begun.' };
      // Worked out here for its answer and by the stream for the run: the same, for both are pure.
      const { tick, refused } = desked(now.session, stampMs, act, by);
      if (refused === null) {
        joined = true;
        put({ what: 'desk', stampMs, act, by });
      }
      return { tick, refused };
    },
    letGo: (stampMs) => { put({ what: 'letGo', stampMs }); },
    onSession(see) {
      watchers.add(see);
      if (now !== null) see(now.session);
      return () => { watchers.delete(see); };
    },
    stop: (stampMs) => { put({ what: 'stop', stampMs }); },
  };
}
