/** Help: every key of every file, the words, the scores, the keys of the drill; searched, and each with an address of its own. */
import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { Page } from '../frame.js';
import type { House } from '../house.js';
import '../look/help.css';
import { bindings } from '../settings.js';
import { PLACES } from '../places.js';
import { hasWords, placeOf, sections, type Entry, type Section } from './entries.js';

interface Props {
  readonly house: House;
  /** A section or an entry, from the address; null for none. */
  readonly at: string | null;
}

const link = (id: string): string => `#/help?k=${encodeURIComponent(id)}`;

function handSection(house: House): Section {
  const entries = house.keyCard(bindings.value).map(({ intent, keys, does, held }): Entry => ({
    id: `hand.${intent}`, name: keys.join(' or '), allowed: null, fallback: '', text: `${does}${held ? ', for as long as it is held' : ''}`, example: null, href: null,
  }));
  return { id: 'hand', title: 'Keys of the drill', about: 'As they stand on this machine; they are changed on the set-up page.', entries };
}

export function Help({ house, at }: Props) {
  const typed = useSignal('');
  const main = useRef<HTMLDivElement>(null);
  const all = sections().flatMap((section) => (section.id === 'page-keys' ? [handSection(house), section] : [section]));
  const place = placeOf(all, at) ?? { section: all[0] as Section, entry: null };
  const wanted = typed.value.trim();
  const found = wanted === '' ? [] : all.map((section) => ({ ...section, entries: section.entries.filter((entry) => hasWords(entry, wanted)) })).filter(({ entries }) => entries.length > 0);
  const count = found.reduce((sum, { entries }) => sum + entries.length, 0);
  useEffect(() => {
    if (wanted !== '' || place.entry === null) return;
    main.current?.querySelector(`[data-id="${CSS.escape(place.entry)}"]`)?.scrollIntoView({ block: 'center' });
  }, [place.entry, wanted]);
  const shown = wanted === '' ? [place.section] : found;
  return (
    <Page title="Help" kind="help">
      <div class="help-head">
        <h1>Help</h1>
        <label class="help-search">
          <span>Search</span>
          <input
            type="search" value={typed.value} placeholder="a key or a word: hazard, split, limitS" autocomplete="off" spellcheck={false}
            onInput={({ currentTarget }) => { typed.value = currentTarget.value; }}
          />
        </label>
        <p class="help-count" role="status">{wanted === '' ? '' : count === 0 ? 'Nothing has all of these words.' : `${count} found`}</p>
      </div>
      <div class="help">
        <nav class="help-sections" aria-label="Sections of help">
          <ul>
            {all.map(({ id, title }) => (
              <li key={id}><a class="plain" href={link(id)} onClick={() => { typed.value = ''; }} {...(wanted === '' && id === place.section.id ? { 'aria-current': 'true' as const } : {})}>{title}</a></li>
            ))}
          </ul>
        </nav>
        <div class="help-main" ref={main}>
          {at !== null && placeOf(all, at) === null && <p class="note" role="alert">There is no help under “{at}”. Search for it, or choose a section.</p>}
          {shown.map((section) => <Shown key={section.id} section={section} here={wanted === '' ? place.entry : null} />)}
          {wanted !== '' && count === 0 && <p class="empty">Fewer letters find more; the words of the app stand under <a href={link('words')} onClick={() => { typed.value = ''; }}>Words</a>.</p>}
        </div>
      </div>
    </Page>
  );
}

function Shown({ section: { id, title, about, entries }, here }: { section: Section; here: string | null }) {
  return (
    <section class="help-section" aria-labelledby={`help-${id}`}>
      <h2 id={`help-${id}`}>{title}</h2>
      <p class="small">{about}</p>
      <dl>{entries.map((entry) => <One key={entry.id} entry={entry} here={entry.id === here} />)}</dl>
    </section>
  );
}

function One({ entry: { id, name, allowed, fallback, text, example, href }, here }: { entry: Entry; here: boolean }) {
  const facts = allowed === null ? [] : [allowed, fallback === '' ? 'may be left out' : fallback === 'required' ? 'must be there' : `${fallback} if left out`];
  return (
    <div class={here ? 'help-entry here' : 'help-entry'} data-id={id}>
      <dt><a href={link(id)} aria-current={here ? 'true' : undefined}>{name}</a></dt>
      <dd>
        {text !== '' && <p>{text}</p>}
        {href !== null && <p><a class="help-go" href={href}>Go to {PLACES.flat().find((place) => place.href === href)?.name ?? 'its keys'}</a></p>}
        {facts.length > 0 && <p class="help-facts">{facts.join(' · ')}</p>}
        {example !== null && <figure class="help-example"><pre>{example.text}</pre><figcaption>{example.does}</figcaption></figure>}
      </dd>
    </div>
  );
}
