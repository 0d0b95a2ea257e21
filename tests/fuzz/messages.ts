/** The link between a run and a desk: any message in either direction leaves the run whole. */
import fc from 'fast-check';
import { deskActSchema, lobbySchema, roomSchema, shapeOf, tryAs, verify } from '../../sim/files/index.js';
import { memoryRooms } from '../../src/link/port.js';
import { actWords } from '../../src/pages/desk/words.js';
import { flown, guest } from '../link/bench.js';
import { door, type Door } from './door.js';
import { must } from './promises.js';
import { valueOfShape } from './texts.js';
import { untouched, watched } from './watched.js';

const act = valueOfShape(shapeOf(deskActSchema));
const message = fc.oneof(
  fc.record({ kind: fc.constant('act'), from: fc.constantFrom('desk-1', 'desk-2', '__proto__', 'run-1'), number: fc.integer({ min: 0, max: 5 }), act }),
  fc.record({ kind: fc.constantFrom('join', 'beat', 'leave', 'seek', 'gone', 'here'), from: fc.constantFrom('desk-1', 'desk-2', 'run-1') }),
  fc.record({ kind: fc.constant('grades'), from: fc.constantFrom('desk-1'), number: fc.nat(3), grades: fc.jsonValue({ maxDepth: 3 }) }),
  fc.record({ kind: fc.constant('step'), from: fc.constantFrom('run-1', 'x'), number: fc.nat(9), tick: fc.integer({ min: -1, max: 400 }), stands: fc.constantFrom('runs', 'paused', 'x'), commands: fc.array(act, { maxLength: 2 }) }),
  fc.jsonValue({ maxDepth: 3 }),
);

async function talked(messages: readonly unknown[]): Promise<void> {
  for (const one of messages) {
    watched('a message', () => { tryAs(roomSchema, one); tryAs(lobbySchema, one); });
    const read = tryAs(deskActSchema, (one as { act?: unknown } | null)?.act);
    if (read.ok) must(actWords(read.value).length > 0, 'an act without words');
  }
  const open = memoryRooms();
  const run = flown(open, { id: 'run-1' });
  const desk = guest(open);
  try {
    desk.enter('run-1');
    const [room, lobby] = [open('run run-1'), open('lobby')];
    for (const one of messages) {
      room.send(one);
      lobby.send(one);
      await Promise.resolve();
      run.to(run.session().world.state.tick * 10 + 60);
    }
    await Promise.resolve();
    const record = run.end();
    const verdict = verify(record);
    must(verdict.ok, `a run with a hostile desk is not proved: ${JSON.stringify(verdict.refused.slice(0, 2))}`);
    untouched('the link');
  } finally {
    desk.close();
    run.host.close();
  }
}

export const deskDoor: Door = door('desk', 4, fc.array(message, { minLength: 1, maxLength: 8 }), talked);
