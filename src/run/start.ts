/** Starts a drill: one stream of frames and inputs, scanned into sessions, drawn once a frame. */
import { map, merge, scan, Subject, takeWhile, type Observable } from 'rxjs';
import { ready } from '../../sim/files/index.js';
import { expand } from '../../sim/index.js';
import { frames } from '../clock/frames.js';
import type { DrillOptions, Hand, RunningDrill } from './drill.js';
import { enter, type Entry } from './entry.js';
import { panelOf, pictureOf } from './picture.js';
import { recordOf } from './record.js';
import { startSession, type Session } from './session.js';

/**
 * Starts the clock at the first frame.
 * @param frame$ stamps of animation frames, ms of the page's clock; the page's own unless a test brings some
 */
export function startDrill(options: DrillOptions, frame$: Observable<number> = frames()): RunningDrill {
  const scenario = ready(options.scenario, options.airframe);
  const first = expand(scenario, options.airframe, options.seed);
  const hands = new Set<Hand>();
  const input$ = new Subject<Entry>();

  const begin = (entry: Entry): Session | null => (entry.what === 'frame' ? startSession(first, entry.stampMs) : null);
  const session$ = merge(input$, frame$.pipe(map((stampMs): Entry => ({ what: 'frame', stampMs })))).pipe(
    scan((session: Session | null, entry) => (session === null ? begin(entry) : enter(session, entry)), null),
    takeWhile((session) => session === null || session.over === null, true),
  );

  const draws = new Set<Parameters<RunningDrill['onPicture']>[0]>();
  const ends = new Set<Parameters<RunningDrill['onEnd']>[0]>();
  let drawn: Session['world'] | null = null;
  let running = true;
  let record: ReturnType<typeof recordOf> | null = null;

  session$.subscribe((session) => {
    if (session === null) return;
    // An act alone changes nothing that can be seen: the next frame steps it.
    if (session.world !== drawn || session.running !== running) {
      drawn = session.world;
      running = session.running;
      const picture = pictureOf(session.world, options.airframe, scenario, !session.running);
      for (const draw of draws) draw(picture);
    }
    if (session.over === null) return;
    record = recordOf(session, options, hands);
    for (const end of ends) end(record);
  });

  const put = (entry: Entry): void => {
    if (entry.what === 'act') hands.add(entry.hand);
    input$.next(entry);
  };
  return {
    panel: panelOf(options.airframe, first),
    onPicture(draw) {
      draws.add(draw);
      return () => { draws.delete(draw); };
    },
    onEnd(end) {
      ends.add(end);
      if (record !== null) end(record);
    },
    act: (stampMs, act, hand) => { put({ what: 'act', stampMs, act, hand }); },
    lose: (stampMs, loss) => { put({ what: loss, stampMs }); },
    pause: (stampMs) => { put({ what: 'pause', stampMs }); },
    resume: (stampMs) => { put({ what: 'resume', stampMs }); },
    stop: (stampMs) => { put({ what: 'stop', stampMs }); },
  };
}
