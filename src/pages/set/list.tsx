/** The sets, below the drills: what they are for, and how far the last flight of each has come. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { House } from '../house.js';
import { fragmentOf } from '../route.js';
import type { SetCard } from './card.js';
import { setTask } from './task.js';

export function SetList({ house }: { house: House }) {
  const sets = useSignal<readonly SetCard[] | null>(null);
  useEffect(() => { void house.sets().then((all) => { sets.value = all; }, () => { sets.value = []; }); }, [house]);
  if (sets.value === null || sets.value.length === 0) return null;
  return (
    <section aria-labelledby="sets-title" class="set-list">
      <h2 id="sets-title" class="ruled">Practice and sets</h2>
      <div class="group">
        <div class="group-head"><h3 class="group-name">Practice</h3><p>One run after another, at a rate that follows your hand.</p></div>
        <ol class="drills"><li><a class="drill" href={fragmentOf({ page: 'practice' })}><span class="drill-number" /><span class="drill-task">Let go when they part</span><span class="drill-facts set-runs">any number</span><span class="drill-facts">about a minute each</span><span class="drill-kind">told at once</span></a></li></ol>
      </div>
      <div class="group">
        <div class="group-head"><h3 class="group-name">Measuring</h3><p>Many short runs that count together. They give numbers with intervals, and ask for an unhurried half hour.</p></div>
        <ol class="drills">
          {sets.value.filter(({ shipped }) => shipped).map((set) => (
            <li key={set.number}>
              <a class="drill" href={fragmentOf({ page: 'set', number: set.number })}>
                <span class="drill-number"><span class="unseen">Set </span>{set.number}</span>
                <span class="drill-task">{setTask(set)}</span>
                <span class="drill-facts set-runs">{set.runs} runs</span>
                <span class="drill-facts">about {set.minutes} min{set.words.length > 1 ? ' · laboratory' : ''}</span>
                <span class="drill-kind">{set.loaded ? 'loaded' : 'calm'}</span>
              </a>
            </li>
          ))}
        </ol>
      </div>
    </section>
  );
}
