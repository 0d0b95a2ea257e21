/** Who flies: a short name, so that several people can share a machine. Nothing asks for a password, and nothing is proved. */
import { useSignal } from '@preact/signals';
import type { House } from '../house.js';
import { people, refresh, withBook } from './logged.js';
import { person } from '../settings.js';

/** Longest short name. */
const LONGEST = 20;

export function People({ house }: { house: House }) {
  const typed = useSignal('');
  const name = typed.value.trim();
  const add = (): void => {
    if (name === '') return;
    void withBook(house, (book) => book.addPerson(name, Date.now())).then(() => {
      person.value = name;
      typed.value = '';
      return refresh(house);
    });
  };
  return (
    <form class="people" aria-label="Who flies" onSubmit={(event) => { event.preventDefault(); add(); }}>
      <label>The next runs are flown by
        <select value={person.value} onChange={({ currentTarget: { value } }) => { person.value = value; }}>
          <option value="">no name</option>
          {[...new Set([...people.value, ...(person.value === '' ? [] : [person.value])])].map((one) => <option key={one} value={one}>{one}</option>)}
        </select>
      </label>
      <label>or by someone new
        <input type="text" maxLength={LONGEST} value={typed.value} placeholder="short name" onInput={({ currentTarget: { value } }) => { typed.value = value; }} />
      </label>
      <button class="button quiet" type="submit" disabled={name === ''}>Add</button>
    </form>
  );
}
