/** What is practised and what is not: every kind of fault against every leg. A full place opens its scenarios, an empty one begins one. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Airframe, Scenario } from '../../../../sim/files/index.js';
import { readScenario } from '../../../text/index.js';
import { FAULT_WORDS } from '../../faults.js';
import '../../look/coverage.css';
import type { BenchProps } from '../bench.js';
import { beginCell } from './begin.js';
import { coverageOf, keyOf, legsOf, type Cell, type Covered, type Leg, type Role, type Row } from './matrix.js';

interface File {
  readonly name: string;
  readonly text: string;
  readonly own: string | null;
}

const ROWS: readonly Row[] = [...Object.keys(FAULT_WORDS) as Exclude<Row, 'none'>[], 'none'];
const wordsOf = (row: Row): string => (row === 'none' ? 'Nothing goes wrong' : `${FAULT_WORDS[row].of} ${FAULT_WORDS[row].may}`);
const ROLES: readonly (readonly [Role | 'both', string])[] = [['both', 'Either part'], ['flying', 'Flying'], ['driving', 'Driving']];

export function Coverage({ house, kit, draft }: BenchProps) {
  const chosen = useSignal<string>([...kit.airframes.keys()][0] ?? '');
  const role = useSignal<Role | 'both'>('both');
  const at = useSignal<{ readonly row: Row; readonly leg: Leg } | null>(null);
  const own = useSignal<readonly File[]>([]);
  useEffect(() => { void ownFiles(house).then((files) => { own.value = files; }, () => { own.value = []; }); }, [house]);
  const airframe = kit.airframes.get(chosen.value);
  if (airframe === undefined) return null;
  const files: readonly File[] = [...own.value, ...kit.shipped.filter(({ kind }) => kind === 'scenario').map(({ name, text }) => ({ name, text, own: null }))];
  const all = coverageOf(files.flatMap((file): Covered<File>[] => {
    const scenario = soundOf(file.text, kit.airframes);
    return scenario === null ? [] : [{ scenario, of: file }];
  }), airframe.name);
  const cellsOf = (row: Row, leg: Leg): readonly Cell<File>[] => (all.get(keyOf(row, leg)) ?? []).filter((cell) => role.value === 'both' || cell.role === role.value);
  const legs = legsOf(airframe);
  const places = ROWS.length * legs.length;
  const filled = ROWS.reduce((sum, row) => sum + legs.filter((leg) => cellsOf(row, leg).length > 0).length, 0);
  const begin = (row: Row, leg: Leg): void => draft.open({ kind: 'scenario', own: null, ...beginCell(row, leg, role.value === 'driving' ? 'driving' : 'flying', airframe) });
  return (
    <div class="coverage">
      <div class="coverage-bar">
        <label>Airframe <select value={chosen.value} onChange={({ currentTarget }) => { chosen.value = currentTarget.value; at.value = null; }}>{[...kit.airframes].map(([name, { title }]) => <option key={name} value={name}>{title}</option>)}</select></label>
        <label>Part <select value={role.value} onChange={({ currentTarget }) => { role.value = currentTarget.value as Role | 'both'; }}>{ROLES.map(([value, name]) => <option key={value} value={value}>{name}</option>)}</select></label>
        <p class="small" role="status">{filled} of {places} places are practised.</p>
      </div>
      <div class="wide">
        <table class="coverage-table">
          <caption class="unseen">Kinds of fault by leg: how many scenarios practise it.</caption>
          <Heads legs={legs} airframe={airframe} />
          <tbody>
            {ROWS.map((row) => (
              <tr key={row}>
                <th scope="row">{wordsOf(row)}</th>
                {legs.map((leg) => {
                  const cells = cellsOf(row, leg);
                  const name = `${wordsOf(row)}, ${legWords(leg, airframe)}`;
                  const here = at.value?.row === row && at.value.leg.toDeg === leg.toDeg && at.value.leg.way === leg.way;
                  return (
                    <td key={keyOf(row, leg)} class={leg.way}>
                      {cells.length === 0
                        ? <button class="coverage-none" type="button" aria-label={`${name}: none, write one`} onClick={() => begin(row, leg)}><span aria-hidden="true">+</span></button>
                        : <button class={cells.some(({ sure }) => sure) ? 'coverage-some' : 'coverage-some maybe'} type="button" aria-label={`${name}: ${cells.length}`} aria-pressed={here} onClick={() => { at.value = here ? null : { row, leg }; }}>{cells.length}</button>}
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p class="small">A number is how many scenarios practise it; in an outline, by time or chance, it may come on that leg or on another. + begins a new scenario there; Undo brings back what was being written.</p>
      {at.value !== null && (
        <section class="coverage-list" aria-label="Scenarios of the place">
          <h3 class="ruled">{wordsOf(at.value.row)}, {legWords(at.value.leg, airframe)}</h3>
          <ul>
            {cellsOf(at.value.row, at.value.leg).map(({ of, role: part }) => (
              <li key={`${of.own ?? ''} ${of.name}`}><button class="plain" type="button" onClick={() => draft.open({ kind: 'scenario', name: of.name, text: of.text, own: of.own })}>{of.name}</button> <span class="small">{part === 'driving' ? 'driving' : 'flying'}{of.own === null ? '' : ', own'}</span></li>
            ))}
          </ul>
          <button class="button quiet" type="button" onClick={() => { if (at.value !== null) begin(at.value.row, at.value.leg); }}>Write another</button>
        </section>
      )}
    </div>
  );
}

const nameIn = ({ settings }: Airframe, deg: number): string => settings.find((one) => one.deg === deg)?.name ?? `${deg}`;
const legWords = ({ toDeg, way }: Leg, airframe: Airframe): string => `${way} to ${nameIn(airframe, toDeg)}`;

function Heads({ legs, airframe }: { legs: readonly Leg[]; airframe: Airframe }) {
  const ways = [['out', 'Out to'], ['in', 'In to']] as const;
  return (
    <thead>
      <tr><td />{ways.map(([way, name]) => <th key={way} scope="colgroup" colSpan={legs.filter((leg) => leg.way === way).length} class={way}>{name}</th>)}</tr>
      <tr><td />{legs.map((leg) => <th key={`${leg.way} ${leg.toDeg}`} scope="col" class={leg.way}>{nameIn(airframe, leg.toDeg)}</th>)}</tr>
    </thead>
  );
}

const read = new Map<string, Scenario | null>();

/** Texts are read once: a table of cells is drawn often. */
function soundOf(text: string, airframes: ReadonlyMap<string, Airframe>): Scenario | null {
  const known = read.get(text);
  if (known !== undefined) return known;
  const got = readScenario(text, '', (name) => airframes.get(name));
  read.set(text, got.ok ? got.value : null);
  return got.ok ? got.value : null;
}

async function ownFiles(house: BenchProps['house']): Promise<File[]> {
  const shelf = await house.own.shelf();
  const entries = (await shelf.list()).filter(({ kind }) => kind === 'scenario');
  const files = await Promise.all(entries.map(({ id }) => shelf.file(id)));
  return files.flatMap((file) => (file === null ? [] : [{ name: file.name, text: file.text, own: file.id }]));
}
