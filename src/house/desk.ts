/** A desk: the link, and the run that it mirrors as the page shows it. */
import type { DeskAct, RunRecord } from '../../sim/files/index.js';
import type { DeskHouse, DeskLive, DeskNow, Happened } from '../pages/desk/house.js';
import { actWords, dueWords, handWords, toldByAct } from '../pages/desk/words.js';
import type { Mirror } from '../link/mirror.js';

/** So many of the latest happenings are told. */
const TOLD = 60;

async function kit() {
  const [link, port, sim, picture, cues, cautions] = await Promise.all([
    import('../link/guest.js'), import('../link/port.js'), import('../../sim/index.js'), import('../run/picture.js'), import('../run/cues.js'),
    import('../run/cautions.js'),
  ]);
  return { ...link, ...port, ...sim, ...picture, ...cues, ...cautions };
}
type Kit = Awaited<ReturnType<typeof kit>>;

/** Makes of mirrors what the page shows; remembers when entries were first seen to have acted, and which words are up. */
function shower(all: Kit) {
  const { cuesOf, dueRows, holdHasLetGo, isTakenBack, panelOf, pictureOf, authorityNow, talkNow } = all;
  let panel: ReturnType<typeof panelOf> | null = null;
  let cues: ReturnType<typeof cuesOf> = [];
  let acted = new Map<number, number>();
  return (mirror: Mirror, own: string): DeskLive => {
    const { world, airframe, scenario, log } = mirror;
    const { state: s, fixed } = world;
    cues = cuesOf(cues, world);
    const due = dueRows(world);
    acted = new Map(due.filter(({ state }) => state === 'acted' || state === 'ended').map(({ place }) => [place, acted.get(place) ?? s.tick]));
    const filed = log.filter(({ tick }) => tick < s.tick || mirror.stands !== 'runs');
    const happened: Happened[] = filed.flatMap((one): Happened[] => {
      const words = one.rank === 1 ? actWords(one as Parameters<typeof actWords>[0]) : handWords(one);
      return words === null ? [] : [{ key: `c${one.seq}`, tick: one.tick, by: one.rank === 1 ? 'desk' : 'hand', other: one.by === undefined || one.by === own ? null : one.by, words }];
    });
    const acts = filed.filter(({ rank }) => rank === 1) as unknown as DeskAct[];
    const ran = due.flatMap((row): Happened[] => {
      const tick = acted.get(row.place);
      return tick === undefined || toldByAct(row, acts) ? [] : [{ key: `e${row.place}`, tick, by: 'run', other: null, words: dueWords(row) }];
    });
    return {
      title: mirror.title, panel: (panel ??= panelOf(airframe, mirror.start)), tick: s.tick, stands: mirror.stands,
      picture: pictureOf(world, airframe, scenario, {
        blank: false, frozen: mirror.stands === 'frozen', coverOpen: false, training: true,
        talk: talkNow(cues, world, log as Parameters<typeof talkNow>[2], scenario.procedure.list), holdLetGo: holdHasLetGo(log, scenario.speedHold, s.tick),
      }),
      leftDeg: s.leftDeg, rightDeg: s.rightDeg, heldS: s.heldTicks / 100, rollAuthorityPct: authorityNow(s, fixed),
      due, happened: [...happened, ...ran].sort((a, b) => b.tick - a.tick).slice(0, TOLD),
      moments: filed.flatMap((one) => (one.do === 'saveMoment' && !isTakenBack(fixed.agenda.turns, one.tick + 1) ? [{ label: one.label, tick: one.tick }] : [])),
      prompted: filed.some((one) => one.do === 'prompted'),
      names: fixed.agenda.entries.flatMap(({ name }) => (name === null ? [] : [name])),
    };
  };
}

const newName = (): string => `desk-${[...crypto.getRandomValues(new Uint8Array(3))].map((byte) => byte.toString(16).padStart(2, '0')).join('')}`;

export const desk: DeskHouse = {
  async open(see) {
    const all = await kit();
    let show = shower(all);
    let room: string | null = null;
    const now = ({ rooms, room: of, stage, mirror, sent, record }: { rooms: DeskNow['rooms']; room: string | null; stage: DeskNow['stage']; mirror: Mirror | null; sent: DeskNow['sent']; record: RunRecord | null }): void => {
      if (of !== room) {
        room = of;
        show = shower(all);
      }
      see({ rooms, room: of, stage, live: mirror === null ? null : show(mirror, guest.id()), sent, record });
    };
    const guest = all.openGuest({ id: newName(), open: all.windowsPort, now: () => performance.now(), onView: now });
    return guest;
  },
};
