// Times of things taken turn about, so that all of them meet the same machine; and what makes one of them slower on purpose.

const now = () => {
  const { user, system } = process.cpuUsage();
  return user + system;
};

/** Processor time of one call, us. @param spoil so many times as long again is waited busily: the self-test's delay */
export function processorUs(once, spoil = 0) {
  const from = now();
  once();
  const used = now() - from;
  for (const until = now() + used * spoil; now() < until;);
  return now() - from;
}

export const median = (all) => [...all].sort((a, b) => a - b)[Math.floor(all.length / 2)];
export const best = (all) => Math.min(...all);

/** Rounds of all of them, each after each. Gives the times of each by name. */
export function turnAbout(cases, rounds, { warm = 3, spoil = {} } = {}) {
  const names = Object.keys(cases);
  for (let round = 0; round < warm; round += 1) for (const name of names) cases[name]();
  const times = Object.fromEntries(names.map((name) => [name, []]));
  for (let round = 0; round < rounds; round += 1) for (const name of names) times[name].push(processorUs(cases[name], spoil[name]));
  return times;
}

/** Middle half of the ratios of the rounds, as words. */
export function spreadOf(over, under) {
  const ratios = over.map((one, at) => one / under[at]).sort((a, b) => a - b);
  const at = (part) => ratios[Math.min(ratios.length - 1, Math.floor(part * ratios.length))].toFixed(2);
  return `middle half of ${ratios.length} rounds ${at(0.25)} to ${at(0.75)}`;
}
