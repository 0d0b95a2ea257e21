/** One contract that every port keeps, whatever carries it. */
import { afterEach, describe, expect, it } from 'vitest';
import { memoryRooms, windowsPort, type OpenPort, type Port } from '../../src/link/port.js';

const open: Port[] = [];
afterEach(() => { for (const port of open.splice(0)) port.close(); });

let fresh = 0;
describe.each<[string, () => OpenPort]>([['in memory', memoryRooms], ['between windows', () => windowsPort]])('a port %s', (_, kind) => {
  const room = () => {
    const make = kind();
    fresh += 1;
    const name = `test ${process.pid} ${fresh}`;
    return (other = '') => {
      const port = make(name + other);
      open.push(port);
      return port;
    };
  };
  /** The next messages that a port hears. */
  const heard = (port: Port, count: number) => new Promise<unknown[]>((done) => {
    const all: unknown[] = [];
    port.onMessage((message) => { if (all.push(message) === count) done(all); });
  });

  it('knows its room and carries plain data to everyone else in it, in order, never to itself', async () => {
    const enter = room();
    const [a, b, c] = [enter(), enter(), enter()];
    expect(a.room).toBe(b.room);
    const own: unknown[] = [];
    a.onMessage((message) => own.push(message));
    const [toB, toC] = [heard(b, 3), heard(c, 3)];
    const sent = [{ n: 1, list: [1.5, null, 'ä'] }, { n: 2 }, { n: 3 }];
    for (const message of sent) a.send(message);
    expect(await toB).toEqual(sent);
    expect(await toC).toEqual(sent);
    expect(own).toEqual([]);
  });

  it('hands over copies', async () => {
    const enter = room();
    const [a, b] = [enter(), enter()];
    const arrived = heard(b, 1);
    const sent = { deep: { value: 1 } };
    a.send(sent);
    sent.deep.value = 2;
    const [got] = await arrived as [typeof sent];
    expect(got.deep.value).toBe(1);
    got.deep.value = 3;
    expect(sent.deep.value).toBe(2);
  });

  it('keeps rooms apart', async () => {
    const enter = room();
    const [a, there, b] = [enter(), enter(' other'), enter()];
    const wrong: unknown[] = [];
    there.onMessage((message) => wrong.push(message));
    const arrived = heard(b, 1);
    a.send('here');
    await arrived;
    expect(wrong).toEqual([]);
  });

  it('says nothing and hears nothing once it is closed, and closing twice is nothing', async () => {
    const enter = room();
    const [a, b, c] = [enter(), enter(), enter()];
    const late: unknown[] = [];
    c.onMessage((message) => late.push(message));
    c.close();
    c.close();
    expect(() => c.send('from the closed')).not.toThrow();
    const arrived = heard(b, 1);
    a.send('to the open');
    expect(await arrived).toEqual(['to the open']);
    expect(late).toEqual([]);
  });

  it('stops calling back when it is asked to', async () => {
    const enter = room();
    const [a, b] = [enter(), enter()];
    const one: unknown[] = [];
    const undo = b.onMessage((message) => one.push(message));
    const first = heard(b, 1);
    a.send(1);
    await first;
    undo();
    const second = heard(b, 1);
    a.send(2);
    await second;
    expect(one).toEqual([1]);
  });
});
