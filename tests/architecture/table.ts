// The house as data: which part may import which. A file that belongs to no part is refused, so a new folder starts here.

/** A row reads "these places may import from the rows above it, from their own row, and from the packages named". */
export interface Row {
  places: string[];
  packages?: Record<string, string[]>;
}

/** A place is a folder ('sim/drive/') or a file; the longest that fits a path is the one meant. */
export const simRows: Row[] = [
  { places: ['sim/portable.ts', 'sim/dice.ts', 'sim/units.ts', 'sim/state.ts', 'sim/in-tick.ts'] },
  { places: ['sim/drive/', 'sim/flight/', 'sim/warning/', 'sim/task/'] },
  { places: ['sim/'] }, // the files that know the whole world: world, agenda, command, the prepared airframe
  { places: ['sim/expand.ts', 'sim/replay.ts'] },
  { places: ['sim/desk/'] }, // a live run: needs the step and the dice
  { places: ['sim/score/'], packages: { 'sim/score/': ['@noble/hashes'] } },
  { places: ['sim/trainee/', 'sim/practice/', 'sim/sweep/', 'sim/set/', 'sim/advise/'] },
  { places: ['sim/stats/', 'sim/wing/'] },
  { places: ['sim/course/'] },
  { places: ['sim/files/'], packages: { 'sim/files/': ['zod/mini', '@noble/hashes'] } },
  { places: ['sim/index.ts'] },
];

/** Rules know numbers, not each other: besides the first row (the state and its one way to latch a number in it) only their own folder. */
export const ruleFolders = ['sim/drive/', 'sim/flight/', 'sim/warning/', 'sim/task/'];
export const ruleLeaves = ['sim/portable.ts', 'sim/dice.ts', 'sim/units.ts', 'sim/state.ts'];
export const ruleTypesFrom = ['sim/in-tick.ts'];

/** Known to the rest of sim by their types alone: whoever checks files brings the checking library along. */
export const typesOnlyFrom = ['sim/files/'];

/** Rows of src. Every place here may also import sim; sim imports none of them. */
export const srcRows: Row[] = [
  { places: ['src/text/'], packages: { 'src/text/': ['jsonc-parser'] } },
  { places: ['src/clock/', 'src/clock.ts'], packages: { 'src/clock': ['rxjs'] } },
  {
    places: ['src/input/', 'src/run/', 'src/view/', 'src/sound/'],
    packages: { 'src/input/': ['rxjs'], 'src/run/': ['rxjs'], 'src/view/': ['pixi.js'] },
  },
  { places: ['src/records/', 'src/link/'], packages: { 'src/records/logbook/': ['idb'], 'src/records/own/': ['idb'] } },
  {
    places: ['src/charts/', 'src/pages/'],
    packages: { 'src/charts/': ['preact', '@preact/signals'], 'src/pages/': ['preact', '@preact/signals'], 'src/pages/bench/text/': ['@codemirror', '@lezer/highlight'] },
  },
  {
    places: ['src/house/', 'src/main.tsx'],
    packages: { 'src/house/': ['@preact/signals'], 'src/main.tsx': ['preact', '@fontsource-variable/inter'] },
  },
];

/** Node's side of src: sees sim, text and itself, and no page sees it. */
export const nodeRows: Row[] = [
  srcRows[0]!,
  { places: ['src/serve/'], packages: { 'src/serve/': ['node:'] } },
  { places: ['src/cli/'], packages: { 'src/cli/': ['node:', 'commander'] } },
];

/** Not to be imported although the rows would allow it. */
export const refusals: { from: string; to: string; why: string }[] = [
  { from: 'src/view/', to: 'src/run/', why: 'a picture does not know who asks for it' },
  { from: 'src/pages/', to: 'src/input/', why: 'pages do not read the hand' },
  { from: 'src/charts/', to: 'src/input/', why: 'charts do not read the hand' },
];

/** Streams own the running drill, signals own the pages: no file has both. */
export const apart = [['rxjs', '@preact/signals']] as const;

/** Lines a file may have, and the files that are one long table. */
export const longestFile = 260;
export const tables: string[] = [];
