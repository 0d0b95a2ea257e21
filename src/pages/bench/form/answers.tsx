/** The answers of a callout, with the right one marked: it keeps being right when its words are changed. */
import type { Json, Path } from '../../../text/index.js';
import type { Draft } from '../draft.js';
import type { Written } from '../words.js';
import { wrongSentence } from '../wrong.js';
import { problemsIn } from './at.js';
import { stepName } from './fields.js';

const FEWEST = 2;
const MOST = 6;

export function Answers({ draft, path, thing }: { readonly draft: Draft; readonly path: Path; readonly thing: Written }) {
  const found = thing['answers'];
  const answers: readonly Json[] = Array.isArray(found) ? found : [];
  const { right } = thing;
  const write = (index: number, text: string): void => {
    const step = stepName([...path, 'answers', index]);
    const wasRight = answers[index] === right;
    draft.put([...path, 'answers', index], text, step);
    if (wasRight) draft.put([...path, 'right'], text, step);
  };
  const problems = [...problemsIn(draft, [...path, 'answers']), ...problemsIn(draft, [...path, 'right'])];
  return (
    <fieldset class="answers-written">
      <legend class="field-name">Answers to choose from; the marked one is right</legend>
      {answers.map((answer, index) => (
        <div key={index} class="answer-written">
          <label class="check"><input type="radio" name={`${path.join('-')}-right`} aria-label={`Answer ${index + 1} is right`} checked={answer === right} onChange={() => draft.put([...path, 'right'], answer)} /></label>
          <input type="text" aria-label={`Answer ${index + 1}`} value={typeof answer === 'string' ? answer : ''} onInput={({ currentTarget: { value } }) => write(index, value)} onBlur={() => draft.part()} />
          <button class="plain" type="button" aria-label={`Take away answer ${index + 1}`} disabled={answers.length <= FEWEST || answer === right} onClick={() => draft.put([...path, 'answers', index], undefined)}>Take away</button>
        </div>
      ))}
      <button class="plain" type="button" disabled={answers.length >= MOST} onClick={() => draft.put([...path, 'answers', answers.length], `answer ${answers.length + 1}`)}>Another answer</button>
      {problems.map((problem) => <p key={`${problem.path} ${problem.allowed}`} class="field-wrong">{wrongSentence(problem)}</p>)}
    </fieldset>
  );
}
