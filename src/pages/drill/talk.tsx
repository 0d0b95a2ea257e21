/** What the outside says to the trainee, apart from the gauge: a message, a callout with its answers, or a freeze. */
import type { ComponentChildren } from 'preact';
import type { Layout } from '../../view/place.js';
import type { Talk as Said } from '../../view/picture.js';
import { keepFocus } from './tabs.js';
import { over } from './twins.js';

interface Props {
  readonly at: Layout;
  readonly talk: Said;
  /** Puts the words aside, where they stand over the hand's controls. */
  readonly later: () => void;
}

/** Words of more letters than this want a line of their own in a narrow box. */
const SHORT = 9;
const inOneColumn = (answers: Said['answers']): boolean => answers.length <= 3 || answers.some(({ length }) => length > SHORT);

/** Answers are pressed like every control of the drill: by their name, through the hands. */
export function Talk({ at, talk: { id, text, answers, caution, part, waiting }, later }: Props) {
  return (
    <Box at={at} label={answers.length === 0 ? 'Message' : 'Question'} {...(caution === null ? {} : { kind: 'talk-caution' })}>
      {/* The same words at the head of a region that speaks when it changes. A caution is spoken once, by the alerts. */}
      <p key={id} class="talk-text" {...(caution === null ? { role: 'alert' as const } : {})}>{text}{waiting > 0 && <span class="talk-more"> · {waiting} more</span>}</p>
      <span class="talk-time" aria-hidden="true"><i style={{ width: `${Math.round(part * 100)}%` }} /></span>
      {answers.length > 0 && (
        <div class={inOneColumn(answers) ? 'talk-answers talk-column' : 'talk-answers'}>
          {answers.map((answer, index) => <button key={answer} type="button" class="talk-answer" data-control={`answer${index + 1}`}>{answer}</button>)}
        </div>
      )}
      {at.talkOver && !at.tabbed && <button type="button" class="plain talk-later" onMouseDown={keepFocus} onClick={later}>Later</button>}
    </Box>
  );
}

/** The clock stands and the instruments stay. */
export function Frozen({ at, resume }: { at: Layout; resume: (stampMs: number) => void }) {
  return (
    <Box at={at} label="Freeze">
      <p class="talk-text" role="alert"><strong>Frozen.</strong> The clock stands. A switch that was held is let go.</p>
      <div class="talk-answers"><button type="button" class="button" data-own-keys="" onClick={({ timeStamp }) => resume(timeStamp)}>Go on</button></div>
    </Box>
  );
}

const Box = ({ at, label, kind = '', children }: { at: Layout; label: string; kind?: string; children: ComponentChildren }) => (
  <section class={`${at.talkOver ? 'talk talk-over' : 'talk'} ${kind}`.trim()} style={over(at.talk)} aria-label={label}>{children}</section>
);
