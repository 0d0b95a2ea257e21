/** The relations of an airframe: those that do not hold with their figures, the others folded to a line each. */
import type { Relation, RelationName } from '../../../../sim/index.js';
import { boundOf, foundIn, RELATION_WORDS } from './relationwords.js';

interface Props {
  readonly relations: readonly Relation[];
  /** Name of a setting. */
  readonly nameOf: (settingDeg: number) => string;
}

export function Relations({ relations, nameOf }: Props) {
  const broken = relations.filter(({ holds }) => !holds).length;
  return (
    <section aria-labelledby="relations-title">
      <h2 id="relations-title" class="ruled">What the rules ask</h2>
      <p role="status">{broken === 0 ? `All ${relations.length} relations hold.` : `${broken} of ${relations.length} relations ${broken === 1 ? 'does' : 'do'} not hold. The file can be flown all the same; the sentence says what to look at.`}</p>
      {(Object.keys(RELATION_WORDS) as RelationName[]).map((name) => (
        <Group key={name} name={name} all={relations.filter((one) => one.name === name)} nameOf={nameOf} />
      ))}
    </section>
  );
}

function Group({ name, all, nameOf }: { name: RelationName; all: readonly Relation[]; nameOf: Props['nameOf'] }) {
  const { asks, rule, look } = RELATION_WORDS[name];
  const broken = all.filter(({ holds }) => !holds);
  if (all.length === 0) return null;
  return (
    <details class="relation" open={broken.length > 0} data-holds={broken.length === 0}>
      <summary><span class="relation-sign">{broken.length === 0 ? 'holds' : 'does not hold'}</span> {asks}. <span class="small">{rule}</span></summary>
      {broken.length > 0 && <p>Look at {look}.</p>}
      <table>
        <thead><tr><th scope="col">setting</th><th scope="col">is</th><th scope="col">must be</th><th scope="col" /></tr></thead>
        <tbody>{all.map((one) => (
          <tr key={one.settingDeg}>
            <th scope="row">{one.settingDeg === null ? 'all' : nameOf(one.settingDeg)}</th><td>{foundIn(one)}</td><td>{boundOf(one)}</td><td>{one.holds ? 'holds' : <strong>does not</strong>}</td>
          </tr>
        ))}</tbody>
      </table>
    </details>
  );
}
