/** What stands about every page: the name, day or night, the caution. */
import { signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { TROUBLES } from './logbook/logged.js';
import { PLACES } from './places.js';
import { unkept } from './session.js';
import { look } from './settings.js';

export const CAUTION = 'A practice aid on an invented airframe. It earns no credit. Your operator’s approved procedures and licensed instruction come first.';

/** For the foot of the drill, where there is little room; the smallest windows have room for what matters most. */
export const ShortCaution = () => <span>Practice aid<span class="caution-more"> on an invented airframe</span>. Your approved procedures come first.</span>;

const dark = matchMedia('(prefers-color-scheme: dark)');
const systemIsDark = signal(dark.matches);
dark.addEventListener('change', () => { systemIsDark.value = dark.matches; });

/** The other colours: what is pressed is what one gets. As the system is chosen on the set-up page. */
function LookButton() {
  const night = look.value === 'night' || (look.value === 'system' && systemIsDark.value);
  return (
    <button class="plain look" type="button" onClick={() => { look.value = night ? 'day' : 'night'; }}>
      <svg class="sign" viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
        <circle cx="10" cy="10" r="7" />
        {!night && <path d="M10 3a7 7 0 0 1 0 14a7 7 0 0 1 0-14Z" />}
      </svg>
      {night ? 'Day' : 'Night'}<span class="unseen"> colours</span>
    </button>
  );
}

/** The name of the house: the two pointers, one in the other. */
const Mark = () => (
  <svg class="mark" viewBox="0 0 34 20" width="34" height="20" aria-hidden="true">
    <path class="mark-open" d="M1 7.5H19V2.5L32.5 10L19 17.5V12.5H1Z" />
    <path class="mark-solid" d="M1 9.1H21V6.6L29 10L21 13.4V10.9H1Z" />
  </svg>
);

interface Props {
  /** Said by the window's title and by the first heading alike. */
  readonly title: string;
  readonly kind: string;
  /** The kind whose place it belongs to, where that is another. */
  readonly within?: string;
  readonly tools?: ComponentChildren;
  readonly children: ComponentChildren;
}

/** A page: its heading takes the focus when the page comes, so that it is read out and Tab starts from there. */
export function Page({ title, kind, within = kind, tools, children }: Props) {
  const main = useRef<HTMLElement>(null);
  useEffect(() => {
    document.title = title === 'Evenhand' ? title : `${title} · Evenhand`;
    main.current?.focus({ preventScroll: true });
    scrollTo(0, 0);
  }, [title]);
  return (
    <div class={`page page-${kind}`}>
      <header class="top">
        <a class="name" href="#/"><Mark />Evenhand</a>
        <nav class="places" aria-label="Places">
          {PLACES.filter((group) => group.length > 0).map((group) => (
            <ul key={group[0]?.href}>
              {group.map(({ kinds, href, name }) => (
                <li key={href}><a class="plain" href={href} {...(kinds.includes(within) ? { 'aria-current': 'page' as const } : {})}>{name}</a></li>
              ))}
            </ul>
          ))}
        </nav>
        <div class="tools">{tools}<LookButton /></div>
      </header>
      <main ref={main} tabIndex={-1} aria-label={title}>
        {unkept.value !== null && <p class="note" role="alert"><span><strong>The last run is not in the logbook.</strong> {TROUBLES[unkept.value]}</span></p>}
        {children}
      </main>
      <footer class="caution"><p>{CAUTION}</p></footer>
    </div>
  );
}
