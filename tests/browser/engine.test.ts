// The model in Chromium and in Node, same to the last bit: every shipped drill under every scripted trainee.
import { expect, test } from 'vitest';
import { flyTrainee, TRAINEES, type Flight, type TraineeName } from '../../sim/index.js';
import { drillNames } from '../../src/cli/places.js';
import { airframeOf, drill } from '../sim/bench.js';
import { appUrl, openApp } from './harness.js';

const SEEDS = [1, 20261125, 4294967295];

test.each(drillNames().map((name, at) => [name, SEEDS[at % SEEDS.length] as number] as const))('%s, seed %i', async (name, seed) => {
  const scenario = drill(name);
  const airframe = airframeOf(scenario);
  const { page, close } = await openApp();
  const given = JSON.stringify({ url: new URL('sim.js', appUrl()).href, scenario, airframe, seed, trainees: TRAINEES });
  // As text: the test runner would turn the import into one of its own, which no page knows.
  const inPage = await page.evaluate(`(async ({ url, scenario, airframe, seed, trainees }) => {
    const { flyTrainee } = await import(url);
    return trainees.map((trainee) => flyTrainee(scenario, airframe, seed, trainee).flight);
  })(${given})`) as Flight[];
  const inNode = TRAINEES.map((trainee: TraineeName) => flyTrainee(scenario, airframe, seed, trainee).flight);
  expect(inPage.map(({ hash }) => hash)).toEqual(inNode.map(({ hash }) => hash));
  expect(inPage).toEqual(inNode);
  await close();
});
