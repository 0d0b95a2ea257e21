/** The same scenario with other dice, at a glance: a row of small runs, one of which is taken to the preview. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { OUTCOME_WORDS, degrees, seconds } from '../../words.js';
import type { BenchProps } from '../bench.js';
import { go } from '../../session.js';
import { MOST_SEED, seed } from './chosen.js';
import type { Glance } from './glance.js';
import { openHand } from './hand.js';
import { orderOf } from './order.js';

const COUNT = 8;
/** Edits rest for so long before the row is flown anew, ms. */
const REST_MS = 300;

export function Variants(props: BenchProps) {
  const { house, draft } = props;
  const open = useSignal(false);
  const from = useSignal(1);
  const glances = useSignal<readonly Glance[]>([]);
  const order = open.value ? orderOf(props) : null;
  const asked = order === null ? '' : JSON.stringify({ ...order, seed: from.value });
  useEffect(() => {
    if (asked === '') return;
    const of = JSON.parse(asked) as NonNullable<typeof order>;
    const hand = openHand();
    let gone = false;
    const work = async (): Promise<void> => {
      const all: Glance[] = [];
      for (let at = 0; at < COUNT && of.seed + at <= MOST_SEED && !gone; at += 1) {
        const back = await hand.ask({ do: 'glance', of: { ...of, seed: of.seed + at } });
        if (gone || back.is !== 'glance') return;
        all.push(back.glance);
        // The row keeps its places while it is flown anew.
        glances.value = [...all, ...glances.peek().slice(all.length)];
      }
      glances.value = all;
    };
    const timer = setTimeout(() => void work().catch(() => { glances.value = []; }), REST_MS);
    return () => {
      gone = true;
      clearTimeout(timer);
      hand.close();
    };
  }, [asked]);
  const fly = async (dice: number): Promise<void> => {
    if (draft.read.value.value?.kind === 'scenario') go({ page: 'own', id: await house.own.handOn(draft.text.value, dice, 'bench') });
  };
  const top = Math.max(1, ...glances.value.map(({ apart, limitDeg }) => Math.max(limitDeg, ...apart)));
  return (
    <details class="variants" onToggle={({ currentTarget }) => { open.value = currentTarget.open; }}>
      <summary>The same with other dice</summary>
      <ol>
        {glances.value.map((one) => (
          <li key={one.seed}>
            <button type="button" aria-pressed={one.seed === seed.value} onClick={() => { seed.value = one.seed; }}>
              <Small of={one} top={top} />
              <span class="variant-words"><strong>Seed {one.seed}</strong> {OUTCOME_WORDS[one.outcome]}{one.side === null ? '' : `, ${one.side} side`}</span>
              <span class="small">{one.onsetS === null ? 'nothing parts' : `onset ${seconds(one.onsetS)}, ${one.growthDeg === null ? 'no release behind it' : `${degrees(one.growthDeg)} at release`}`}</span>
            </button>
            <button class="plain" type="button" disabled={draft.read.value.value === null} onClick={() => void fly(one.seed)}>Fly<span class="unseen"> seed {one.seed}</span></button>
          </li>
        ))}
      </ol>
      {glances.value.length > 0 && (
        <p class="variant-tools">
          <button class="plain" type="button" disabled={from.value <= 1} onClick={() => { from.value = Math.max(1, from.value - COUNT); }}>Seeds before</button>
          <button class="plain" type="button" disabled={from.value + COUNT > MOST_SEED} onClick={() => { from.value += COUNT; }}>Next seeds</button>
        </p>
      )}
    </details>
  );
}

const W = 150;
const H = 46;

/** The shown split over the run, the limit dotted, onset and release marked by shape. */
function Small({ of: { apart, limitDeg, endS, onsetS, releaseS }, top }: { readonly of: Glance; readonly top: number }) {
  const x = (s: number): number => (W * s) / (endS || 1);
  const y = (deg: number): number => H - ((H - 6) * deg) / top;
  const line = apart.map((deg, index) => `${index === 0 ? 'M' : 'L'}${((W * index) / (apart.length - 1)).toFixed(1)} ${y(deg).toFixed(1)}`).join('');
  return (
    <svg viewBox={`-6 0 ${W + 12} ${H + 8}`} aria-hidden="true">
      <line class="strip-rule" x1="0" x2={W} y1={H} y2={H} />
      <line class="limit" x1="0" x2={W} y1={y(limitDeg)} y2={y(limitDeg)} />
      <path class="trace-apart" d={line} />
      {onsetS !== null && <path class="strip-median" d={`M${x(onsetS)} ${H - 5}l5 5l-5 5l-5 -5Z`} />}
      {releaseS !== null && <path class="moment-sign" d={`M${x(releaseS) - 5} ${H - 4}h10l-5 9Z`} />}
    </svg>
  );
}
