/** Flights of one condition: their three numbers side by side over time, what named blocks show, and all of it as a table. */
import type { ConditionGroup, SetFlight } from '../../../sim/index.js';
import { FlightStrip, type Stop } from './flightstrip.js';
import { caught, falseReleases, median, share, whole } from './flightnumbers.js';
import { conditionWords, pairWords } from './words.js';
import { setTask } from '../set/task.js';
import type { SetCard } from '../set/card.js';
import { degrees } from '../words.js';

const DAY = new Intl.DateTimeFormat(undefined, { day: 'numeric', month: 'short' });
const WHEN = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' });

interface Props {
  readonly group: ConditionGroup;
  readonly set: SetCard;
  readonly airframe: string;
  /** Why it stands apart from another group of the same set; null where there is none. */
  readonly apart: string | null;
}

export function PersonGroup({ group: { condition, flights, pairs }, set, airframe, apart }: Props) {
  const limitDeg = flights[0]?.result.limitDeg ?? set.limitDeg;
  const stops = (numbers: (flight: SetFlight) => Pick<Stop, 'value' | 'lo' | 'hi' | 'words'>): Stop[] => flights.map((flight) => ({
    id: flight.id, when: DAY.format(flight.startedMs), name: flight.name, leftOff: flight.leftOff, ...numbers(flight),
  }));
  return (
    <section class="person-group">
      <h2 class="ruled">Set {set.number}. {setTask(set)}, {set.loaded ? 'loaded' : 'calm'}</h2>
      <p class="small">{conditionWords(condition, airframe)}{apart !== null && ` ${apart}`}</p>
      <div class="strips">
        <FlightStrip title="Caught" unit="of decided runs" most={1} tick={(part) => `${Math.round(part * 100)} %`} stops={stops(caught)} />
        <FlightStrip title="False releases" unit="a minute" most={1} tick={(value) => `${value}`} stops={stops(falseReleases)} />
        <FlightStrip title="Median split" unit="at release" most={limitDeg} tick={(value) => `${value}°`} stops={stops(median)} limit={{ value: limitDeg, word: 'late' }} />
      </div>
      {flights.some((flight) => median(flight).value === null) && <p class="small">A cross: fewer than 8 decided runs, so no number yet.</p>}
      {pairs.map((pair) => <p key={`${pair.earlier} ${pair.later}`} class="pair">{pairWords(pair)}</p>)}
      <details class="rows">
        <summary>The flights as a table</summary>
        <div class="wide" tabIndex={0} role="region" aria-label={`Flights of set ${set.number}`}>
          <table class="flights">
            <thead><tr>{['flown', 'name', 'runs', 'caught', 'false releases', 'median split', 'void'].map((head) => <th key={head} scope="col">{head}</th>)}</tr></thead>
            <tbody>{flights.map((flight) => (
              <tr key={flight.id}>
                <th scope="row">{WHEN.format(flight.startedMs)}</th>
                <td>{flight.name === '' ? '–' : flight.name}</td>
                <td>{flight.done} of {flight.runs}{flight.leftOff && ', left off'}</td>
                <td>{whole(caught(flight), share)}</td>
                <td>{whole(falseReleases(flight), (value) => value.toFixed(2))}</td>
                <td>{whole(median(flight), degrees)}</td>
                <td>{flight.result.void}</td>
              </tr>
            ))}</tbody>
          </table>
        </div>
        <p class="small">Behind each number its 95 % interval. A dash: fewer than 8 decided runs. An open dot: left off before its last run; it counts all the same.</p>
      </details>
    </section>
  );
}
