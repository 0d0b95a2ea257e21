/** A gate: what is asked beside one's own figure, each on its scale with its interval; three numbers that stay three. */
import type { GateFile } from '../../../sim/files/index.js';
import type { AskShown, GateShown } from '../../../sim/index.js';
import { at, type Scale } from '../../charts/plot.js';
import { answerWords, askedWords, askName, gateAsks, gateNotes, ownWords } from './words.js';

interface Props {
  readonly gate: GateFile;
  /** null: nobody's. */
  readonly shown: GateShown | null;
  readonly limitDeg: number;
}

export function Gate({ gate, shown, limitDeg }: Props) {
  const asks = shown?.block?.asks ?? null;
  return (
    <div class="gate">
      <dl>
        {gateAsks(gate).map(({ ask, asked }) => {
          const own = asks?.find((one) => one.ask === ask) ?? null;
          return (
            <div key={ask} class={own?.answer === 'met' ? 'ask met' : 'ask'}>
              <dt>{askName(ask)}</dt>
              <dd class="ask-asked">asked: {askedWords(ask, asked)}</dd>
              <dd class="ask-scale"><AskScale ask={ask} asked={asked} own={own} limitDeg={limitDeg} /></dd>
              <dd class="ask-own">{own === null ? 'not flown yet' : <>{ownWords(own)} <strong>{answerWords(own)}</strong></>}</dd>
            </div>
          );
        })}
      </dl>
      <p class="small">{shown !== null && gateNotes(gate, shown).map((line) => `${line} `).join('')}Asked of the end of the exact 95 % interval. {gate.source}</p>
    </div>
  );
}

const W = 200;

/** The asked end as a mark, the interval as a line, the figure as a dot. What lies inside is drawn thick. */
function AskScale({ ask, asked, own, limitDeg }: { ask: AskShown['ask']; asked: number; own: AskShown | null; limitDeg: number }) {
  const most = ask === 'caught' ? 1 : ask === 'falseReleases' ? Math.max(2 * asked, own?.hi ?? 0) : 2 * limitDeg;
  const scale: Scale = { from: 0, to: most, start: 6, end: W - 6 };
  const x = (value: number): number => at(scale, Math.min(most, value));
  const [from, to] = ask === 'caught' ? [asked, most] : [0, asked];
  return (
    <svg viewBox={`0 0 ${W} 24`} width={W} height="24" aria-hidden="true">
      <line class="ask-rule" x1={x(0)} x2={x(most)} y1="16" y2="16" />
      <line class="ask-inside" x1={x(from)} x2={x(to)} y1="16" y2="16" />
      <path class="ask-mark" d={`M${x(asked) - 5} 2h10l-5 8z`} />
      {own !== null && own.lo !== null && <path class="ask-range" d={`M${x(own.lo)} 12v8M${x(own.lo)} 16H${own.hi === null ? W - 2 : x(own.hi)}${own.hi === null ? 'm-5 -4l5 4l-5 4' : 'M' + String(x(own.hi)) + ' 12v8'}`} />}
      {own !== null && own.value !== null && <circle class="ask-dot" cx={x(own.value)} cy="16" r="4.5" />}
    </svg>
  );
}
