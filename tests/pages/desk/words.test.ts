// One happening is told once at the desk.
import { describe, expect, it } from 'vitest';
import type { DeskAct } from '../../../sim/files/index.js';
import type { DueRow } from '../../../sim/index.js';
import { toldByAct } from '../../../src/pages/desk/words.js';

const row = (side: string, byDesk = true): DueRow => ({ place: 0, name: 'desk-stop-1', fault: { kind: 'disconnect', side, name: 'desk-stop-1' }, event: null, byDesk, state: 'acted', waits: null }) as unknown as DueRow;
const put = (side: string, when?: object): DeskAct => ({ do: 'injectFault', fault: { name: 'desk-stop-1', kind: 'disconnect', side, ...(when === undefined ? {} : { when }) } }) as unknown as DeskAct;

describe('a fault that has acted', () => {
  it('was told already by the act that put it in at once', () => expect(toldByAct(row('right'), [put('right')])).toBe(true));
  it('is told when it was armed, since the act said only that', () => expect(toldByAct(row('right'), [put('right', { flapDeg: 8 })])).toBe(false));
  it('is told when the seed drew the side, since the act did not know it', () => expect(toldByAct(row('right'), [put('drawn')])).toBe(false));
  it('is told when it stands in the file', () => expect(toldByAct(row('right', false), [put('right')])).toBe(false));
});
