/** Which of the scripted trainees should pass, and which fail: a drill that teaches is failed by someone. */
import { TRAINEES } from '../../../../sim/index.js';
import { problemsIn, valueAt } from './at.js';
import { Segments } from './fields.js';
import type { FormProps } from './form.js';

const CHOICES = [['', 'either'], ['passes', 'passes'], ['fails', 'fails']] as const;

export function Expected({ draft }: FormProps) {
  const names = (list: 'passes' | 'fails'): string[] => {
    const found = valueAt(draft.json.value, [list]);
    return Array.isArray(found) ? found.map(String) : [];
  };
  const put = (trainee: string, to: '' | 'passes' | 'fails'): void => {
    for (const list of ['passes', 'fails'] as const) {
      const rest = names(list).filter((name) => name !== trainee);
      const next = list === to ? [...rest, trainee] : rest;
      if (next.length !== names(list).length) draft.put([list], next.length === 0 ? undefined : next, `expected ${trainee} ${to}`);
    }
    draft.part();
  };
  return (
    <>
      <div class="fields">
        {TRAINEES.map((trainee) => (
          <div key={trainee} class="field" role="radiogroup" aria-label={trainee}>
            <span class="field-name" aria-hidden="true">{trainee}</span>
            <Segments name={`expected-${trainee}`} choices={CHOICES} chosen={names('passes').includes(trainee) ? 'passes' : names('fails').includes(trainee) ? 'fails' : ''} choose={(to) => put(trainee, to)} />
          </div>
        ))}
      </div>
      {[...problemsIn(draft, ['passes']), ...problemsIn(draft, ['fails'])].map(({ path, found, allowed }) => <p key={path} class="field-wrong">{path} is {found}; allowed: {allowed}.</p>)}
    </>
  );
}
