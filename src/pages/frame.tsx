/** What stands about every page: the name, day or night, the caution. */
import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { look, type Look } from './settings.js';

export const CAUTION = 'A practice aid on an invented airframe. It earns no credit. Your operator’s approved procedures and licensed instruction come first.';

/** For the foot of the drill, where there is little room. */
export const SHORT_CAUTION = 'Practice aid on an invented airframe. Your approved procedures come first.';

const NEXT: Readonly<Record<Look, Look>> = { system: 'day', day: 'night', night: 'system' };
const SAID: Readonly<Record<Look, string>> = { system: 'as the system', day: 'day', night: 'night' };

export function LookButton() {
  return (
    <button class="plain" type="button" onClick={() => { look.value = NEXT[look.value]; }}>
      <svg class="sign" viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
        <circle cx="10" cy="10" r="7" />
        {look.value !== 'day' && <path d={look.value === 'night' ? 'M10 3a7 7 0 0 1 0 14a7 7 0 0 1 0-14Z' : 'M10 3a7 7 0 0 1 0 14Z'} />}
      </svg>
      <span class="unseen">Colours: </span>{SAID[look.value]}
    </button>
  );
}

/** The name of the house: the two pointers, one in the other. */
export const Mark = () => (
  <svg class="mark" viewBox="0 0 34 20" width="34" height="20" aria-hidden="true">
    <path class="mark-open" d="M1 7.5H19V2.5L32.5 10L19 17.5V12.5H1Z" />
    <path class="mark-solid" d="M1 9.1H21V6.6L29 10L21 13.4V10.9H1Z" />
  </svg>
);

interface Props {
  /** Said by the window's title and by the first heading alike. */
  readonly title: string;
  readonly kind: string;
  readonly tools?: ComponentChildren;
  readonly children: ComponentChildren;
}

/** A page: its heading takes the focus when the page comes, so that it is read out and Tab starts from there. */
export function Page({ title, kind, tools, children }: Props) {
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
        <nav class="tools" aria-label="Tools">{tools}<LookButton /></nav>
      </header>
      <main ref={main} tabIndex={-1} aria-label={title}>{children}</main>
      <footer class="caution"><p>{CAUTION}</p></footer>
    </div>
  );
}
