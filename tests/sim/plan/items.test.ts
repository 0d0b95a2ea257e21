/** Items and verdicts: each at its limits exactly, and nothing judged that was not entered. */
import { describe, expect, it } from 'vitest';
import { BLANK, enteredOf, planItems, planOf, planRequestOf, SINGLE_ITEMS, verdictOf, withEntered, withShown, type NumberItem } from '../../../sim/index.js';
import { AIRFRAME, scenario } from '../bench.js';

const plan = planOf(planRequestOf(scenario({ start: { flapDeg: 9, altitudeFt: 2500, speedKt: 160 } }), AIRFRAME));
const item = (id: string, order: 'gearFirst' | 'settingFirst' | null = null) => planItems(plan, order).find((one) => one.id === id)!;

describe('what is asked', () => {
  it('a manoeuvre speed for what is out and for each setting to come, then every single item once', () => {
    expect(planItems(plan).map(({ id }) => id)).toEqual(['manoeuvre-9', 'manoeuvre-16', ...SINGLE_ITEMS]);
  });
  it('each has a sum, and a figure that is right', () => {
    for (const { id, sum } of planItems(plan)) expect(sum.length, id).toBeGreaterThan(10);
  });
  it('a blank plan has no verdict anywhere', () => {
    for (const one of planItems(plan)) {
      expect(enteredOf(one.id, BLANK)).toBeNull();
      expect(verdictOf(one, BLANK)).toBeNull();
    }
  });
});

describe('verdicts', () => {
  const speed = item('referenceKt') as NumberItem;
  const of = (kt: number) => verdictOf({ ...speed, right: 133 }, withEntered(BLANK, 'referenceKt', kt));
  it.each([[133, 'right'], [134, 'right'], [134.5, 'right'], [134.51, 'near'], [138, 'near'], [138.5, 'near'], [138.51, 'off'], [132, 'right'], [131.5, 'right'], [131.4, 'near'], [127.5, 'near'], [127.4, 'off']] as const)(
    '133 kt, 1 right and 5 near, half a knot for rounding: %d is %s', (kt, verdict) => expect(of(kt)).toBe(verdict),
  );
  it('a figure that never comes about is off, whatever is entered', () => {
    expect(verdictOf({ ...speed, right: null }, withEntered(BLANK, 'referenceKt', 133))).toBe('off');
  });
  it('order: the quieter is right, the other stands at its price; the horn is asked of the order that was chosen', () => {
    expect(verdictOf(item('order', 'gearFirst'), withEntered(BLANK, 'order', 'gearFirst'))).toBe('right');
    expect(verdictOf(item('order', 'settingFirst'), withEntered(BLANK, 'order', 'settingFirst'))).toBe('near');
    expect(verdictOf(item('horn', 'gearFirst'), withEntered(BLANK, 'horn', 'silent'))).toBe('right');
    expect(verdictOf(item('horn', 'settingFirst'), withEntered(BLANK, 'horn', 'silent'))).toBe('off');
    expect(verdictOf(item('horn', 'settingFirst'), withEntered(BLANK, 'horn', 'sounds'))).toBe('right');
  });
  it('either order is right where the horn is silent in both', () => {
    const quiet = planOf({ ...plan.request, gear: 'down' });
    for (const order of ['gearFirst', 'settingFirst'] as const) {
      const asked = planItems(quiet, order).find(({ id }) => id === 'order')!;
      expect(verdictOf(asked, withEntered(BLANK, 'order', order))).toBe('right');
    }
  });
  it('a list: all right, one off near, two off off; nothing ticked is an answer', () => {
    const failed = item('failed');
    const right = failed.right as string[];
    const verdict = (ticked: string[]) => verdictOf(failed, withEntered(BLANK, 'failed', ticked));
    expect([verdict(right), verdict(right.slice(1)), verdict([...right, 'autopilot']), verdict(right.slice(2)), verdict([])]).toEqual(['right', 'near', 'near', 'off', 'off']);
  });
});

describe('what is entered', () => {
  it('a speed of a setting is put in place and taken out again', () => {
    const two = withEntered(withEntered(BLANK, 'manoeuvre-16', 143), 'manoeuvre-9', 154);
    expect(two.manoeuvre).toEqual([{ settingDeg: 9, kt: 154 }, { settingDeg: 16, kt: 143 }]);
    expect(withEntered(two, 'manoeuvre-9', null).manoeuvre).toEqual([{ settingDeg: 16, kt: 143 }]);
    expect(withEntered(two, 'manoeuvre-9', 150).manoeuvre).toHaveLength(2);
  });
  it('what is shown stands in the plan, rounded as it is asked for, and is noted once', () => {
    const shown = withShown(withShown(BLANK, item('motorOnS')), item('motorOnS'));
    expect(shown.motorOnS).toBe(Math.round(plan.motorOnS));
    expect(shown.shown).toEqual(['motorOnS']);
    expect(verdictOf(item('motorOnS'), shown)).toBe('right');
    expect(withShown(BLANK, item('failed')).failed).toEqual(item('failed').right);
  });
});

describe('what else failed', () => {
  it('is the airframe’s own list, and an invented one where its file says nothing', () => {
    const own = planOf({ ...plan.request, airframe: { ...AIRFRAME, pressure: { source: 'own papers', systems: [{ name: 'tail', state: 'lost', instead: 'nothing' }, { name: 'lamp', state: 'kept', instead: 'battery' }] } } });
    const failed = planItems(own).find(({ id }) => id === 'failed')!;
    expect([failed.kind === 'many' && failed.choices, failed.right]).toEqual([['tail', 'lamp'], ['tail']]);
    const { pressure: _pressure, ...bare } = AIRFRAME;
    expect(planOf({ ...plan.request, airframe: bare }).pressure).toMatchObject({ source: 'invented' });
    expect(planOf({ ...plan.request, airframe: bare }).pressure.systems.some(({ state }) => state === 'kept')).toBe(true);
  });
});
