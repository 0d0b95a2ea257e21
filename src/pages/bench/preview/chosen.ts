/** Who flies the preview, in which part, and with which dice. It stays as chosen for as long as the page is open. */
import { signal } from '@preact/signals';
import type { TraineeName, TraineeNumbers } from '../../../../sim/index.js';

/** A scripted trainee by name, or one of the person's own trainee files. */
export type Who = { readonly named: TraineeName } | { readonly own: string; readonly name: string; readonly numbers: TraineeNumbers };

export const who = signal<Who>({ named: 'steady' });
/** null: as the scenario has it. */
export const role = signal<'flying' | 'driving' | null>(null);
export const seed = signal(1);
/** Where the cursor of the charts stands, s. */
export const cursor = signal(0);
export const truth = signal(false);

/** The scripted trainees in words an instructor can use. */
export const WHO_WORDS: Readonly<Record<TraineeName, string>> = {
  prompt: 'prompt: lets go 1 s after 1° is shown', slow: 'slow: lets go 6 s after 1°', never: 'never: holds on whatever comes',
  early: 'early: lets go without cause', steady: 'steady: an ordinary watcher', loaded: 'loaded: the same, busy', hasty: 'waits for nothing',
};

export const nameOf = (one: Who): string => ('named' in one ? one.named : one.name);
export const traineeOf = (one: Who): TraineeName | TraineeNumbers => ('named' in one ? one.named : one.numbers);

export const MOST_SEED = 0xffffffff;
