// What a tick costs: `advance`, a frame's two ticks a call and a second's hundred, against the same step on one state in place.
import { best, spreadOf, turnAbout } from './timing.mjs';
import { model } from './model.mjs';

const TICKS = 18_000;
const ROUNDS = 25;

export async function step({ spoil }) {
  const { sim, airframe, drill } = await model();
  const scenario = drill('set-16-from-4');
  const { commands } = sim.flyTrainee(scenario, airframe, 1, 'never');
  const rowTicks = sim.flyTrainee(scenario, airframe, 1, 'never').flight.ticks;
  const start = sim.expand(scenario, airframe, 1, true);
  const stepped = (ticks) => () => {
    let world = start;
    for (let done = 0; done < TICKS; done += ticks) world = sim.advance(world, commands, ticks);
  };
  const times = turnAbout({
    'in place': () => {
      const state = sim.copyState(start.state);
      let next = 0;
      for (let done = 0; done < TICKS; done += 1) next = sim.step(start.fixed, state, commands, next);
    },
    'advance, 2 ticks a call': stepped(2),
    'advance, 100 ticks a call': stepped(100),
    'advance, 1 tick a call': stepped(1),
    'run, with its hash': () => sim.run(start, commands),
    'a row of a sweep': () => sim.flyRow(scenario, airframe, 1, 'never'),
  }, ROUNDS, { spoil: spoil ? { 'advance, 2 ticks a call': 1, 'advance, 100 ticks a call': 1 } : {} });
  const ratio = (name) => best(times[name]) / best(times['in place']);
  const us = (name) => `${name} ${(best(times[name]) / (name === 'a row of a sweep' ? rowTicks : TICKS)).toFixed(3)}`;
  return [
    { id: 'step', value: ratio('advance, 2 ticks a call'), notes: [spreadOf(times['advance, 2 ticks a call'], times['in place']), `us a tick: ${Object.keys(times).map(us).join(', ')}`] },
    { id: 'step100', value: ratio('advance, 100 ticks a call'), notes: [spreadOf(times['advance, 100 ticks a call'], times['in place'])] },
  ];
}
