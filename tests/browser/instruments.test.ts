// Screen equals replay, for the whole list: at random frames every reading and control says what the replayed record says.
import { expect, test } from 'vitest';
import { advance, commandsOfRecord, expand, tickOfStamp, type World } from '../../sim/index.js';
import { ready } from '../../sim/files/index.js';
import { holdHasLetGo } from '../../src/run/cautions.js';
import { panelOf, pictureOf } from '../../src/run/picture.js';
import { CONTROLS, READINGS } from '../../src/view/instruments.js';
import { clockByHand, goTo, startByHand } from './clock.js';
import { save } from './drilling.js';
import { openScenario, plain } from './flying.js';

/** Ticks between two readings for the twins. */
const READ_EVERY = 50;

test('20 random frames of a busy run: every instrument of the list, in words, as the replay has it', async () => {
  const events = [{ when: { atS: 2 }, do: 'descend', toFt: 1200, pathDeg: -3 }, { when: { atS: 3 }, do: 'setGear', to: 'down' }];
  const { page, close } = await openScenario(
    plain({ start: { altitudeFt: 1800, speedKt: 155, flapDeg: 9 }, events, faults: [{ name: 'a', kind: 'lag', side: 'left', ratio: -4, when: { heldS: 2 } }], pointerNoise: true }),
    { before: clockByHand, expected: [/willReadFrequently/] },
  );
  await startByHand(page);
  let ms = 1200;
  let dice = 20251125;
  const random = (): number => {
    dice = (dice * 48271) % 2147483647;
    return dice / 2147483647;
  };
  const shots: { stampMs: number; said: Record<string, string | null> }[] = [];
  const keys = ['g', 'a', 'f', 'u', 'u', 'k', 'k', 'k', 'k', 'l', 'h', 'i', 'f', 'ArrowRight', 'k', 'k', 'j', 'ArrowRight', 'c', 'r'];
  for (const [index, key] of keys.entries()) {
    ms += 150 + random() * 1400;
    await goTo(page, ms, 8 + random() * 20);
    shots.push({
      stampMs: ms,
      said: await page.evaluate(() => Object.fromEntries([
        ...[...document.querySelectorAll<HTMLElement>('[data-reading]')].map((one) => [one.dataset['reading'], one.textContent]),
        ...[...document.querySelectorAll<HTMLElement>('.twin')].map((one) => [one.dataset['control'], `${one.ariaLabel} ${one.ariaPressed ?? one.ariaValueText}`]),
      ]) as Record<string, string | null>),
    });
    if (index === 2) await page.keyboard.down('e');
    await page.keyboard.press(key);
  }
  ms += 300;
  await goTo(page, ms);
  await page.evaluate(() => [...document.querySelectorAll('button')].find((one) => one.textContent === 'Pause')!.click());
  await page.evaluate(() => new Promise((done) => setTimeout(done, 50)));
  await page.evaluate(() => [...document.querySelectorAll('button')].find((one) => one.textContent === 'End the run')!.click());
  await page.getByText('Not sure').waitFor({ state: 'attached' });
  await page.evaluate(() => [...document.querySelectorAll('label')].find((one) => one.textContent?.includes('Not sure'))!.click());
  await page.evaluate(() => new Promise((done) => setTimeout(done, 100)));
  await page.evaluate(() => [...document.querySelectorAll('button')].find((one) => one.textContent === 'Show the debrief')!.click());
  await page.getByRole('button', { name: 'Save record' }).waitFor();
  const record = await save(page);
  await close();

  const scenario = ready(record.scenario, record.airframe);
  const log = commandsOfRecord(record);
  const worlds: World[] = [expand(scenario, record.airframe, record.seed)];
  while (worlds.length <= record.end.tick) worlds.push(advance(worlds[worlds.length - 1]!, log, 1));
  const panel = panelOf(record.airframe, worlds[0]!);
  const filed = record.commands as unknown as Parameters<typeof holdHasLetGo>[0];
  const pictureAt = (tick: number) => pictureOf(worlds[tick]!, record.airframe, scenario, {
    blank: false, frozen: false, coverOpen: false, training: false, talk: null, holdLetGo: holdHasLetGo(filed, scenario.speedHold, tick),
  });
  const words = new Set<string>();
  for (const { stampMs, said } of shots) {
    const { tick } = tickOfStamp(record.clock, stampMs);
    const pictures = Array.from({ length: Math.min(READ_EVERY + 4, tick + 1) }, (_, back) => pictureAt(tick - back));
    for (const { id, name, say } of READINGS) {
      expect(pictures.map((now) => `${name}: ${say(now, panel)}`), `${id} at ${tick}`).toContain(said[id]);
      words.add(`${id} ${said[id]}`);
    }
    for (const { id, name, role, say, on } of CONTROLS) {
      const wanted = pictures.map((now) => {
        const state = say(now, panel);
        if (role === 'slide') return `${name} ${state}`;
        return `${state === '' ? name : `${name}: ${state}`} ${on(now, panel)}`;
      });
      expect(wanted, `${id} at ${tick}`).toContain(said[id]);
    }
  }
  expect(shots).toHaveLength(20);
  // The run was a busy one: most instruments said more than one thing.
  for (const id of ['speed', 'selected', 'altitude', 'control', 'gearState', 'thrust', 'alerts', 'leftPointer', 'rightPointer']) {
    expect([...words].filter((one) => one.startsWith(`${id} `)).length, id).toBeGreaterThan(1);
  }
}, 120_000);
