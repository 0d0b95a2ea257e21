/** A desk in a running drill, without a page: order, the clock, the end, and the record that comes of it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { digestOf, flownRecord, recordSchema, tryAs, verify, type Act, type DeskAct, type RunRecord } from '../../sim/files/index.js';
import { advance, expand, snapshot, withDesk } from '../../sim/index.js';
import { desked, letGo } from '../../src/run/desked.js';
import { draftOf } from '../../src/run/record.js';
import { file, frame, halt, resume, startSession, stop, type Session } from '../../src/run/session.js';
import { isVoided } from '../../sim/score/replayed.js';
import { AIRFRAME, scenario } from '../sim/bench.js';
import { anywhere } from '../draw.js';

const START_MS = 500.25;
const SCENARIO = scenario({ faults: [{ name: 'file', kind: 'slow', factor: 0.8, when: { atS: 3 } }], task: { settings: [16], limitS: 120 } });
const first = expand(SCENARIO, AIRFRAME, 7);
const begin = (): Session => startSession(first, START_MS);

function to(session: Session, ms: number, frameMs = 16.7): Session {
  let now = session;
  for (let at = 10 * now.world.state.tick; at < ms; at += frameMs) now = frame(now, START_MS + Math.min(ms, at));
  return frame(now, START_MS + ms);
}
const recordOf = (session: Session): RunRecord => flownRecord(
  { app: 'test', seed: 7, airframe: AIRFRAME, scenario: SCENARIO, device: { isolated: true, clockGrainMs: 0.005, renderer: 'none', input: '' }, gauge: { pxPerDeg: 5, pixelRatio: 1, mmPerPx: null } },
  draftOf(session, new Set(['key']), false, true), { tick: session.endTick, why: session.over ?? 'stopped' },
);
const proved = (session: Session): RunRecord => {
  const record = JSON.parse(JSON.stringify(recordOf(session))) as RunRecord;
  expect(tryAs(recordSchema, record).ok).toBe(true);
  expect(verify(record).refused).toEqual([]);
  expect(record.source).toBe('live');
  return record;
};

const ACTS: Act[] = [{ do: 'openGuard' }, { do: 'arm' }, { do: 'holdDrive', way: 'extend' }, { do: 'releaseDrive' }, { do: 'closeGuard' }, { do: 'setFlapLever', settingDeg: 16 }, { do: 'selectSpeed', speedKt: 160 }, { do: 'callSplit' }];
const DESK: DeskAct[] = [
  { do: 'injectFault', fault: { name: 'stop', kind: 'disconnect', side: 'drawn' } }, { do: 'injectFault', fault: { name: 'slip', kind: 'slip', side: 'left', ratio: 0, periodS: 1, onS: 0.5, when: { heldS: 1 } } },
  { do: 'injectFault', fault: { name: 'lie', kind: 'pointer', side: 'right', mode: 'bias', biasDeg: 2, when: { any: [{ flapDeg: 5 }, { atS: 4.5 }] } } }, { do: 'clearFaults' }, { do: 'clearFault', name: 'file' },
  { do: 'disarmFault', name: 'file' }, { do: 'failEngine', side: 'left' }, { do: 'loseMainDrive' }, { do: 'returnMainDrive' },
  { do: 'callout', from: 'otherPilot', text: 'How many?', answers: ['16', '61'], right: '61', withinS: 2 }, { do: 'clearHeading', from: 'controller', text: 'Fly heading 120.', toDeg: 120, withinS: 2 },
  { do: 'clearAltitude', text: 'Descend.', toFt: 3000, withinS: 2 }, { do: 'caution', text: 'pressure', withinS: 1 }, { do: 'tellGoAround', from: 'controller', text: 'Go around.', withinS: 5 },
  { do: 'selectSpeed', speedKt: 150 }, { do: 'message', text: 'look' }, { do: 'remark', label: 'scan' }, { do: 'reposition', toTick: 150 }, { do: 'reposition', toTick: 40 },
];
const inputs = fc.array(fc.record({ act: fc.constantFrom(...ACTS), atMs: anywhere(0, 7990), lateMs: fc.integer({ min: 0, max: 240 }) }), { maxLength: 25 });
const acts = fc.array(fc.record({ act: fc.constantFrom(...DESK), atMs: anywhere(0, 7990) }), { maxLength: 10 });
const lengths = fc.array(fc.constantFrom(4, 16.7, 33.4, 120, 240), { minLength: 1, maxLength: 5 });

describe('order', () => {
  it('the same acts, those of a desk among them, delivered in any order and up to 25 ticks late, in any frames: the same world', () => {
    fc.assert(fc.property(inputs, acts, lengths, (hand, desk, frameMs) => {
      const queue = [
        ...hand.map(({ act, atMs, lateMs }) => ({ arrives: atMs + lateMs, go: (s: Session) => file(s, START_MS + atMs, act) })),
        ...desk.map(({ act, atMs }) => ({ arrives: atMs, go: (s: Session) => desked(s, START_MS + atMs, act, 'desk-1').session })),
      ].sort((a, b) => a.arrives - b.arrives);
      let session = begin();
      for (let now = 0, i = 0; now < 8500; i += 1) {
        const next = Math.min(8500, now + (frameMs[i % frameMs.length] as number));
        while (queue[0] !== undefined && queue[0].arrives < next) {
          session = queue[0].go(frame(session, START_MS + queue[0].arrives));
          queue.shift();
        }
        session = frame(session, START_MS + next);
        now = next;
      }
      const straight = advance(withDesk(first, session.log), session.log, session.world.state.tick);
      expect(snapshot(session.world.state)).toEqual(snapshot(straight.state));
      proved(stop(session, START_MS + 8505));
    }), { numRuns: 40 });
  });
});

describe('the clock', () => {
  const frozen = () => desked(to(begin(), 2000), START_MS + 2003, { do: 'freeze' }, 'desk-1').session;

  it('stands by a freeze, takes what a desk does meanwhile, and goes on', () => {
    let session = frozen();
    expect(session.running).toBe(false);
    expect(frame(session, START_MS + 5000).world.state.tick).toBe(200);
    const put = desked(session, START_MS + 5000, { do: 'injectFault', fault: { name: 'x', kind: 'dead' } }, 'desk-2');
    expect(put.tick).toBe(200);
    session = desked(put.session, START_MS + 6000, { do: 'goOn' }, 'desk-1').session;
    session = to({ ...session }, 2000);
    session = frame(session, START_MS + 6100);
    expect(session.world.state).toMatchObject({ tick: 210, latched: { driveDead: 1 } });
    const record = proved(stop(session, START_MS + 6110));
    expect(record.commands.filter(({ rank }) => rank === 1).map((one) => [one.do, one.tick, 'by' in one ? one.by : null])).toEqual([['freeze', 200, 'desk-1'], ['injectFault', 200, 'desk-2'], ['goOn', 200, 'desk-1']]);
  });

  it('lets a held switch go when it is frozen', () => {
    const held = file(file(file(to(begin(), 1000), START_MS + 1000, { do: 'openGuard' }), START_MS + 1000, { do: 'arm' }), START_MS + 1000, { do: 'holdDrive', way: 'extend' });
    const session = desked(to(held, 3000), START_MS + 3000, { do: 'freeze' }, 'desk-1').session;
    expect(session.log.at(-1)).toMatchObject({ do: 'releaseDrive', tick: 300, rank: 2 });
  });

  it.each<[string, Session, DeskAct, RegExp]>([
    ['a second freeze', frozen(), { do: 'freeze' }, /stands already/], ['going on while it runs', to(begin(), 1000), { do: 'goOn' }, /The clock runs/],
    ["going on from the trainee's own pause", halt(to(begin(), 1000), START_MS + 1000, 'pause'), { do: 'goOn' }, /only the trainee/],
    ['a run that is over', stop(to(begin(), 1000), START_MS + 1000), { do: 'prompted' }, /over/],
    ['a moment that has hardly been', to(begin(), 3000), { do: 'reposition', toTick: 201 }, /not long enough/],
    ['an unknown fault', to(begin(), 1000), { do: 'clearFault', name: 'nobody' }, /No fault is called nobody/],
  ])('%s is refused, and nothing is filed', (_, session, act, why) => {
    const answer = desked(session, START_MS + 9000, act, 'desk-1');
    expect(answer.refused).toMatch(why);
    expect(answer.session).toBe(session);
  });
  it('a moment a second ago may come back', () => {
    expect(desked(to(begin(), 3000), START_MS + 3000, { do: 'reposition', toTick: 200 }, 'desk-1').refused).toBeNull();
  });
});

describe('the end', () => {
  it.each([['running', (s: Session) => s], ['frozen', (s: Session) => desked(s, START_MS + 2000, { do: 'freeze' }, 'd').session], ['paused', (s: Session) => halt(s, START_MS + 2000, 'pause')]] as const)('by a desk, with the reason in the record: %s', (_, before) => {
    const { session, refused } = desked(before(to(begin(), 2000)), START_MS + 4003, { do: 'voidRun', reason: 'fire bell' }, 'desk-1');
    expect(refused).toBeNull();
    const record = proved(session);
    expect(record.commands.at(-1)).toMatchObject({ do: 'voidRun', reason: 'fire bell' });
    expect([record.outcome, record.end.why]).toEqual(['void', 'stopped']);
  });

  it('by the trainee, while frozen: the remarks made meanwhile are kept', () => {
    const session = desked(desked(to(begin(), 2000), START_MS + 2000, { do: 'freeze' }, 'd').session, START_MS + 3000, { do: 'remark', label: 'late look' }, 'd').session;
    expect(proved(stop(session, START_MS + 4000)).commands.at(-1)).toMatchObject({ do: 'remark', label: 'late look' });
  });
});

it('a first frame is marked behind each onset, and the one that stands is scored', () => {
  let session = desked(begin(), START_MS, { do: 'injectFault', fault: { name: 'a', kind: 'disconnect', side: 'left', when: { heldS: 1 } } }, 'd').session;
  const hold = (s: Session, ms: number) => file(file(file(to(s, ms), START_MS + ms, { do: 'openGuard' }), START_MS + ms, { do: 'arm' }), START_MS + ms, { do: 'holdDrive', way: 'extend' });
  session = to(hold(session, 1500), 4000);
  expect(session.world.state.latched.onsetTick).toBeGreaterThan(150);
  session = desked(session, START_MS + 4000, { do: 'reposition', toTick: 100 }, 'd').session;
  session = to(hold(session, 5000), 8000);
  const record = proved(stop(session, START_MS + 8000));
  const frames = record.marks.filter(({ what }) => what === 'firstFrame');
  expect(frames).toHaveLength(2);
  expect(record.score.onsetS).toBeGreaterThan(5);
  expect(record.score.firstFrameS! - record.score.onsetS!).toBeLessThan(0.05);
});

it('the hand that left for the window of a desk: let go, marked, and the clock runs', () => {
  const session = letGo(to(begin(), 2000), START_MS + 2004);
  expect(session.running).toBe(true);
  expect(session.marks.at(-1)).toMatchObject({ what: 'focusLost', tick: 200 });
  proved(stop(to(session, 2500), START_MS + 2500));
  // What the desk's page says of it: such a mark voids a run whose first release is scored.
  expect(isVoided([...session.marks])).toBe(true);
});

describe('an altered act of a desk is refused', () => {
  let session = desked(begin(), START_MS, { do: 'injectFault', fault: { name: 'a', kind: 'disconnect', side: 'left', when: { heldS: 1 } } }, 'd').session;
  for (const act of [{ do: 'openGuard' }, { do: 'arm' }, { do: 'holdDrive', way: 'extend' }] as Act[]) session = file(session, START_MS + 20, act);
  session = to(session, 3000);
  session = desked(session, START_MS + 3000, { do: 'selectSpeed', speedKt: 150 }, 'd').session;
  session = desked(to(session, 5000), START_MS + 5000, { do: 'reposition', toTick: 250 }, 'd').session;
  const record = proved(stop(to(session, 7000), START_MS + 7000));
  const place = (what: string) => record.commands.findIndex((one) => one.do === what && one.rank === 1);
  const altered = (change: (copy: RunRecord) => void) => {
    const copy = structuredClone(record);
    change(copy);
    return verify({ ...copy, digest: digestOf(copy) });
  };
  it.each<[string, (copy: RunRecord) => void]>([
    ['taken out', (copy) => { copy.commands.splice(place('injectFault'), 1); }], ['other side', (copy) => { (copy.commands[place('injectFault')] as { fault: { side: string } }).fault.side = 'right'; }],
    ['other condition', (copy) => { (copy.commands[place('injectFault')] as { fault: { when: { heldS: number } } }).fault.when.heldS = 1.01; }], ['other speed', (copy) => { (copy.commands[place('selectSpeed')] as { speedKt: number }).speedKt = 151; }],
    ['other moment', (copy) => { (copy.commands[place('reposition')] as { toTick: number }).toTick = 249; }], ['other tick', (copy) => { copy.commands[place('selectSpeed')]!.tick += 1; }],
    ['reposition taken out', (copy) => { copy.commands.splice(place('reposition'), 1); }], ['passed off as flown', (copy) => { copy.source = 'flown'; }],
  ])('%s', (_, change) => { expect(altered(change).ok).toBe(false); });
});

it('a paused run that the trainee goes on with takes what a desk put in meanwhile', () => {
  const paused = halt(to(begin(), 2000), START_MS + 2000, 'pause');
  const put = desked(paused, START_MS + 3000, { do: 'failEngine', side: 'right' }, 'd');
  const session = frame(resume(put.session, START_MS + 4000), START_MS + 4050);
  expect(session.world.state.latched.rightLive).toBe(0);
  proved(stop(session, START_MS + 4060));
});
