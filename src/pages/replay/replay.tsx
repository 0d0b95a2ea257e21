/** The replay: the drill's instruments at the cursor, played, stepped, scrubbed, or led to a moment of note. */
import { useSignal, type Signal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import type { RunRecord } from '../../../sim/files/index.js';
import type { Facts } from '../debrief/facts.js';
import type { House, Replayed } from '../house.js';
import { Heard, isHeard } from './heard.js';
import { Instruments } from './instruments.js';
import { momentsOf, SIGNS, type Moment } from '../debrief/moments.js';
import { tickAt, usePlayer, type Player } from './player.js';
import { spokenRow } from './readings.js';
import { Whole } from './whole.js';
import { seconds } from '../words.js';

const RATES = [0.25, 0.5, 1, 2, 4] as const;

interface Props {
  readonly house: House;
  readonly facts: Facts;
  readonly run: RunRecord;
  /** null until the run is at hand. */
  readonly replayed: Signal<Replayed | null>;
  /** Where the replay and the charts stand, s. */
  readonly cursor: Signal<number>;
  /** True sides instead of the pointers. */
  readonly truth: Signal<boolean>;
}

export function Replay(props: Props) {
  return (
    <section class="replay" aria-labelledby="replay-title">
      <h2 id="replay-title" class="ruled">Replay</h2>
      {props.replayed.value === null ? <p class="instruments waiting" role="status">Getting the replay ready …</p> : <Playing {...props} replayed={props.replayed.value} />}
    </section>
  );
}

/** A mark of the run, at the tick in which it stands. */
type Mark = Moment & { readonly tick: number };

function Playing({ house, facts, run, replayed, cursor, truth }: Omit<Props, 'replayed'> & { readonly replayed: Replayed }) {
  const player = usePlayer(cursor, replayed.endTick / 100);
  const whole = useSignal(false);
  const opener = useRef<HTMLButtonElement>(null);
  const tick = Math.min(replayed.endTick, tickAt(cursor.value));
  const marks = momentsOf(facts, run).map((one): Mark => ({ ...one, tick: Math.min(replayed.endTick, Math.ceil(one.atS * 100 - 1e-6)) }));
  const go = (to: number): void => {
    player.playing.value = false;
    cursor.value = Math.max(0, Math.min(replayed.endTick, to)) / 100;
  };
  const drawn = { house, replayed, cursor, truth };
  const heard = isHeard(facts, run.scenario.procedure.list) && <Heard facts={facts} talk={replayed.pictureAt(tick, truth.value).talk} atS={tick / 100} />;
  const transport = <Transport {...{ replayed, cursor, truth, player, tick, marks, go }} />;
  return (
    <>
      {/* One drawing at a time: while the whole window shows it, the column keeps its place. */}
      {whole.value ? <div class="instruments" /> : <Instruments {...drawn} />}
      {heard}
      {!whole.value && transport}
      {whole.value && (
        <Whole
          run={run} heard={heard} instruments={(layoutOf) => <Instruments {...drawn} layoutOf={layoutOf} />}
          close={() => {
            whole.value = false;
            opener.current?.focus();
          }}
        >
          {transport}
        </Whole>
      )}
      <div class="jumps">
        <ul aria-label="Marks of the run">
          {marks.filter(({ word }) => word !== 'answer').map((one) => <li key={`${one.word}${one.atS}`}><Jump moment={one} here={one.tick === tick} go={() => go(one.tick)} /></li>)}
        </ul>
        <button ref={opener} class="plain" type="button" onClick={() => { whole.value = true; }}>As flown<span class="unseen">, over the whole window</span></button>
      </div>
    </>
  );
}

interface TransportProps extends Pick<Props, 'cursor' | 'truth'> {
  readonly replayed: Replayed;
  readonly player: Player;
  readonly tick: number;
  readonly marks: readonly Mark[];
  /** To a tick, where it stands still. */
  readonly go: (tick: number) => void;
}

function Transport({ replayed, cursor, truth, player: { playing, rate }, tick, marks, go }: TransportProps) {
  const before = marks.findLast((one) => one.tick < tick);
  const next = marks.find((one) => one.tick > tick);
  return (
    <>
      <input
        class="moment-scrub" type="range" min={0} max={replayed.endTick / 100} step={0.01} value={tick / 100} aria-label="Moment of the replay" aria-valuetext={spokenRow(replayed.rowAt(tick))}
        onInput={({ currentTarget }) => { cursor.value = Number(currentTarget.value); }}
      />
      <div class="transport">
        <button class="button play" type="button" onClick={() => { playing.value = !playing.value; }}><PlaySign playing={playing.value} />{playing.value ? 'Pause' : 'Play'}</button>
        <label class="rate">Rate <select value={rate.value} onChange={({ currentTarget }) => { rate.value = Number(currentTarget.value); }}>{RATES.map((one) => <option key={one} value={one}>{one === 0.25 ? '¼' : one === 0.5 ? '½' : one} ×</option>)}</select></label>
        <span class="steps">
          <button class="plain" type="button" disabled={tick <= 0} onClick={() => go(tick - 1)} >−0.01 s<span class="unseen">, one tick back</span></button>
          <output class="clock">{(tick / 100).toFixed(2)} s</output>
          <button class="plain" type="button" disabled={tick >= replayed.endTick} onClick={() => go(tick + 1)} >+0.01 s<span class="unseen">, one tick on</span></button>
        </span>
        <span class="steps">
          <button class="plain" type="button" disabled={before === undefined} onClick={() => before && go(before.tick)}>‹ mark<span class="unseen"> before{before === undefined ? '' : `: ${before.word}`}</span></button>
          <button class="plain" type="button" disabled={next === undefined} onClick={() => next && go(next.tick)}>mark<span class="unseen"> after{next === undefined ? '' : `: ${next.word}`}</span> ›</button>
        </span>
        <label class="check"><input type="checkbox" checked={truth.value} onChange={({ currentTarget }) => { truth.value = currentTarget.checked; }} /> True sides</label>
      </div>
    </>
  );
}

const Jump = ({ moment: { atS, word, sign, rank }, here, go }: { moment: Moment; here: boolean; go: () => void }) => (
  <button class={rank <= 1 ? 'jump strong' : 'jump'} type="button" onClick={go} {...(here ? { 'aria-current': 'true' as const } : {})}>
    <svg viewBox="-8 -8 16 16" width="16" height="16" aria-hidden="true"><path class="moment-sign" d={SIGNS[sign]} /></svg>
    {word}<span>{seconds(atS)}</span>
  </button>
);

const PlaySign = ({ playing }: { playing: boolean }) => (
  <svg class="sign" viewBox="0 0 18 18" width="18" height="18" aria-hidden="true"><path d={playing ? 'M4 3H7.5V15H4ZM10.5 3H14V15H10.5Z' : 'M4 2.5L15.5 9L4 15.5Z'} /></svg>
);
