/** Who flies the preview, in which part, and with which dice. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { numbersOf } from '../../../../sim/files/index.js';
import { TRAINEES, type TraineeName } from '../../../../sim/index.js';
import type { OwnEntry } from '../../../records/own/index.js';
import { readTrainee } from '../../../text/index.js';
import type { BenchProps } from '../bench.js';
import { MOST_SEED, role, seed, who, WHO_WORDS } from './chosen.js';

export function WhoFlies({ house }: Pick<BenchProps, 'house'>) {
  const own = useSignal<readonly OwnEntry[]>([]);
  const refused = useSignal<string | null>(null);
  useEffect(() => {
    // Without a store there are no own files, and the six are enough.
    house.own.shelf().then((shelf) => shelf.list()).then((all) => { own.value = all.filter(({ kind }) => kind === 'trainee'); }, () => undefined);
  }, [house]);
  const choose = async (value: string): Promise<void> => {
    refused.value = null;
    if (!value.startsWith('own ')) {
      who.value = { named: value as TraineeName };
      return;
    }
    const file = await house.own.shelf().then((shelf) => shelf.file(value.slice(4))).catch(() => null);
    const read = file === null ? null : readTrainee(file.text, file.name);
    if (file !== null && read?.ok === true) who.value = { own: file.id, name: file.name, numbers: numbersOf(read.value) };
    else refused.value = file === null ? 'That file is not on the shelf any more.' : `${file.name} has problems; open it here to mend them.`;
  };
  const now = who.value;
  return (
    <div class="who">
      <label>Flown by
        <select value={'named' in now ? now.named : `own ${now.own}`} onChange={({ currentTarget: { value } }) => void choose(value)}>
          {TRAINEES.map((name) => <option key={name} value={name}>{WHO_WORDS[name]}</option>)}
          {own.value.length > 0 && <optgroup label="Own trainees">{own.value.map(({ id, name }) => <option key={id} value={`own ${id}`}>{name}</option>)}</optgroup>}
        </select>
      </label>
      <label>Part
        <select value={role.value ?? ''} onChange={({ currentTarget: { value } }) => { role.value = value === '' ? null : value as 'flying' | 'driving'; }}>
          <option value="">as written</option><option value="flying">flies and drives</option><option value="driving">drives only</option>
        </select>
      </label>
      <span class="seed">
        <label>Seed <input type="number" min={0} max={MOST_SEED} step={1} value={seed.value} onInput={({ currentTarget: { valueAsNumber } }) => { if (Number.isInteger(valueAsNumber) && valueAsNumber >= 0 && valueAsNumber <= MOST_SEED) seed.value = valueAsNumber; }} /></label>
        <button class="plain" type="button" onClick={() => { seed.value = seed.value === MOST_SEED ? 0 : seed.value + 1; }}>Next seed</button>
      </span>
      {refused.value !== null && <p class="small" role="alert">{refused.value}</p>}
    </div>
  );
}
