// The tick against its twin in C++. The twin is given every number as the bits that `expand` worked out, flies runs with faults on
// either side, and must come to the hash that `run` comes to; only then is anything timed.
import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { join } from 'node:path';
import { inFolder } from './bundle.mjs';
import { model } from './model.mjs';
import { best, processorUs } from './timing.mjs';

const source = fileURLToPath(new URL('twin/', import.meta.url));
const ROUNDS = 6;

const cell = new DataView(new ArrayBuffer(8));
/** A double as its bits. */
const bits = (value) => {
  cell.setFloat64(0, Number(value));
  return cell.getBigUint64(0).toString(16);
};

/** Keys whose values are numbers. */
const numbers = (object) => Object.keys(object).filter((key) => typeof object[key] === 'number');

/** What a fault and an act are called in the twin: their places here. */
const KINDS = {
  disconnect: () => [0], lag: ({ ratio }) => [1, ratio], pointer: ({ biasDeg }) => [3, biasDeg], slow: ({ factor }) => [4, factor],
  slip: ({ ratio, periodS, onS }) => [2, ratio, Math.round(periodS * 100), Math.round(onS * 100)],
};
const WAY = { extend: 1, retract: -1 };
const ACTS = {
  openGuard: () => [0], arm: () => [1], holdDrive: ({ way }) => [2, WAY[way]], releaseDrive: () => [3], setFlapLever: ({ settingDeg }) => [4, settingDeg],
  setThrust: ({ tlaDeg }) => [5, tlaDeg], selectSpeed: ({ speedKt }) => [6, speedKt], setGear: ({ to }) => [7, to === 'down' ? 1 : 0],
  roll: ({ control }) => [8, control], callSplit: () => [9],
};
const due = (tick, [what, a = 0, b = 0, c = 0], side) => [tick, what, side === 'right' ? 1 : 0, a, b, c];

/** A hand's log from rows of [s, act]. */
const logOf = (rows) => rows.map(([atS, act], seq) => ({ tick: Math.round(atS * 100), rank: 2, seq, ...act }));
const FLY = [
  [0.5, { do: 'openGuard' }], [1, { do: 'arm' }], [2, { do: 'setFlapLever', settingDeg: 16 }], [3, { do: 'holdDrive', way: 'extend' }],
  [34, { do: 'releaseDrive' }], [36, { do: 'callSplit' }],
];
const BY_HAND = [
  [0.5, { do: 'openGuard' }], [1, { do: 'arm' }], [3, { do: 'holdDrive', way: 'extend' }], [12, { do: 'releaseDrive' }], [13, { do: 'holdDrive', way: 'extend' }],
  [30, { do: 'roll', control: -0.25 }], [33, { do: 'roll', control: 0.1 }], [36, { do: 'releaseDrive' }], [38, { do: 'selectSpeed', speedKt: 150 }],
  [50, { do: 'holdDrive', way: 'retract' }], [58, { do: 'releaseDrive' }], [70, { do: 'setThrust', tlaDeg: 30 }], [80, { do: 'setGear', to: 'down' }],
];

/** The runs: faults on either side, with noise and without. */
const RUNS = ['left', 'right'].flatMap((side, at) => [
  { name: `disconnect ${side}`, log: FLY, keys: { faults: [{ name: 'a', kind: 'disconnect', side, when: { atS: 14 } }] } },
  { name: `lag ${side}, by hand`, log: BY_HAND, keys: { pointerNoise: at === 0, faults: [{ name: 'a', kind: 'lag', side, ratio: 0.7, when: { atS: 9 } }, { name: 'b', kind: 'slow', factor: 0.8, when: { atS: 20 } }] } },
  { name: `slip ${side}, a pointer that lies`, log: FLY, keys: { pointerNoise: at === 1, faults: [
    { name: 'a', kind: 'pointer', mode: 'bias', side: side === 'left' ? 'right' : 'left', biasDeg: 0.4, when: { atS: 6 } }, { name: 'b', kind: 'slip', side, ratio: 0.4, periodS: 2, onS: 0.7, when: { atS: 8 } }] } },
]);

function structs(sim, { fixed }) {
  const of = (name, keys) => `struct ${name} { double ${keys.join(', ')}; };\n`;
  return of('State', sim.STATE_KEYS) + of('Drive', numbers(fixed.drive)) + of('Flight', numbers(fixed.flight)) + of('Horn', numbers(fixed.horn)) + of('Task', Object.keys(taskOf(fixed)));
}
const taskOf = ({ task, noise, groundM, gearPerTick, drive }) => ({
  limitTicks: task.limitTicks, recognition: task.recognition ? 1 : 0, trim: noise.trim, perDeg: noise.perDeg, leftMismatchDeg: noise.leftMismatchDeg, rightMismatchDeg: noise.rightMismatchDeg,
  groundM, gearPerTick, extendSprung: drive.extendSwitch === 'sprung' ? 1 : 0, retractSprung: drive.retractSwitch === 'sprung' ? 1 : 0,
});
function told(sim, { fixed, state }, commands) {
  const { drive, flight, horn, noise, task, agenda } = fixed;
  const pick = (object) => numbers(object).map((key) => object[key]);
  const row = (all) => [all.length, ...all];
  return [
    ...sim.snapshot(state), ...pick(drive), ...pick(flight), ...pick(horn), ...Object.values(taskOf(fixed)),
    ...[flight.leverTlaDeg, flight.leverFraction, flight.clMaxFlapDeg, flight.clMaxCl, noise.gustTicks, noise.gusts, noise.leftWander, noise.rightWander, task.settings].flatMap((all) => row([...all])),
    agenda.entries.length, ...agenda.entries.flatMap(({ tick, fault }) => due(tick, KINDS[fault.kind](fault), fault.side)),
    commands.length, ...commands.flatMap((command) => due(command.tick, ACTS[command.do](command))),
  ].map(bits).join('\n');
}

export async function twin({ spoil, wrong }) {
  if (spawnSync('g++', ['--version']).status !== 0) return [{ id: 'twin', value: null, notes: ['not measured: no C++ compiler (g++) here'] }];
  const { sim, airframe, own } = await model();
  return inFolder((folder) => {
    const runs = RUNS.map(({ name, log, keys }, at) => {
      const commands = logOf(log);
      const world = sim.expand(own(keys), airframe, at + 1, true);
      const file = join(folder, `${at}.bits`);
      writeFileSync(file, told(sim, world, commands));
      return { name, world, commands, file };
    });
    writeFileSync(join(folder, 'names.h'), structs(sim, runs[0].world));
    const program = join(folder, 'twin');
    const made = spawnSync('g++', ['-std=c++17', '-O2', '-ffp-contract=off', '-Wall', '-I', folder, '-I', source, '-o', program, join(source, 'twin.cpp')], { encoding: 'utf8' });
    if (made.status !== 0) return [{ id: 'twin', value: NaN, notes: [`the twin does not compile: ${made.stderr.split('\n')[0]}`] }];
    const flown = (file, repeats) => JSON.parse(spawnSync(program, [file, String(repeats)], { encoding: 'utf8' }).stdout);

    const wrongly = runs.flatMap(({ name, world, commands, file }, at) => {
      const here = sim.run(world, commands).hash;
      const there = wrong && at === 0 ? here.replace(/.$/, (digit) => (digit === '0' ? '1' : '0')) : flown(file, 1).hash;
      return here === there ? [] : [`${name}: ${here} here, ${there} in C++`];
    });
    if (wrongly.length > 0) return [{ id: 'twin', value: NaN, notes: wrongly }];

    const stepped = ({ world, commands }) => () => {
      let to = world;
      for (let tick = 0; tick < world.fixed.task.limitTicks; tick += 2) to = sim.advance(to, commands, 2);
    };
    for (const one of runs) for (let k = 0; k < 3; k += 1) stepped(one)();
    const rounds = Array.from({ length: ROUNDS }, () => runs.map((one) => ({
      ours: best(Array.from({ length: 4 }, () => processorUs(stepped(one), spoil ? 2 : 0))) * 1000 / one.world.fixed.task.limitTicks,
      twins: flown(one.file, 8).ns,
    })));
    const sum = (side) => runs.reduce((all, _, at) => all + best(rounds.map((round) => round[at][side])), 0);
    const ratios = rounds.map((round) => round.reduce((all, { ours }) => all + ours, 0) / round.reduce((all, { twins }) => all + twins, 0)).sort((a, b) => a - b);
    return [{
      id: 'twin', value: sum('ours') / sum('twins'),
      notes: [`hashes equal over ${runs.length} runs (${runs.map(({ name }) => name).join('; ')}); ${ROUNDS} rounds ${ratios[0].toFixed(2)} to ${ratios[ROUNDS - 1].toFixed(2)}; ns a tick: advance ${(sum('ours') / runs.length).toFixed(0)}, C++ ${(sum('twins') / runs.length).toFixed(0)}`],
    }];
  });
}
