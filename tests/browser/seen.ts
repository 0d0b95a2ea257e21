// What can be seen on a page, measured in the page: sizes, colours, the ring of the focus.
import type { Page } from 'playwright-core';

/** How much wider than the window the page is, px. */
export const wider = (page: Page): Promise<number> => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);

/** Controls whose target is under 44 px one way, by their words. A link within a sentence is as high as its line (2.5.8, inline). */
export const narrowTargets = (page: Page): Promise<string[]> => page.evaluate(() => {
  const isInline = (one: Element): boolean => one.matches('a') && getComputedStyle(one).display === 'inline' && [...(one.parentElement?.childNodes ?? [])].some((node) => node !== one && (node.textContent ?? '').trim() !== '');
  return [...document.querySelectorAll<HTMLElement>('button, a[href], [role=slider], input, select, summary, label')].flatMap((one) => {
    const target = one.matches('input') ? (one.closest('label') ?? one) : one;
    if (!target.checkVisibility({ visibilityProperty: true }) || isInline(one)) return [];
    const { width, height } = target.getBoundingClientRect();
    return width >= 43.9 && height >= 43.9 ? [] : [`${one.textContent || one.getAttribute('aria-label')} ${one.tagName} ${width.toFixed(0)} x ${height.toFixed(0)}`];
  });
});

/** Words that are seen in part only: past an edge of the window that cannot be scrolled to, or of a box that hides what is over. */
export const clipped = (page: Page): Promise<string[]> => page.evaluate(() => {
  const found: string[] = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
    const words = (node.textContent ?? '').trim();
    const parent = node.parentElement;
    if (words === '' || parent === null || parent.closest('.unseen, script, noscript, details:not([open]) > :not(summary)') || !parent.checkVisibility({ visibilityProperty: true })) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    const { left, right, top, bottom, width } = range.getBoundingClientRect();
    if (width === 0) continue;
    const scrolls = (one: Element): boolean => /auto|scroll/.test(getComputedStyle(one).overflowX);
    let cut = false;
    for (let box: Element | null = parent; box !== null && !cut; box = box.parentElement) {
      if (scrolls(box)) break;
      const isRoot = box === document.documentElement;
      const { overflowX, overflowY, textOverflow } = getComputedStyle(box);
      const edge = isRoot ? { left: 0, right: innerWidth, top: -Infinity, bottom: Infinity } : box.getBoundingClientRect();
      // A line that ends in dots says itself that it goes on; that is still words that are lost.
      if (isRoot || overflowX !== 'visible' || textOverflow === 'ellipsis') cut ||= left < edge.left - 1 || right > edge.right + 1;
      if (overflowY === 'hidden' || overflowY === 'clip') cut ||= top < edge.top - 4 || bottom > edge.bottom + 4;
    }
    if (cut) found.push(words.slice(0, 80));
  }
  return found;
});

export interface Pair {
  text: string;
  /** As #rrggbb. */
  ink: string;
  paper: string;
}

/** Every text that is seen, with its colour and that of what it stands on. What is switched off is left out, as WCAG does. */
export const textPairs = (page: Page): Promise<Pair[]> => page.evaluate(() => {
  const hex = (colour: string): string => `#${(colour.match(/[\d.]+/g) ?? []).slice(0, 3).map((part) => Math.round(Number(part)).toString(16).padStart(2, '0')).join('')}`;
  const isClear = (colour: string): boolean => /^rgba\(.*, 0\)$/.test(colour) || colour === 'transparent';
  const behind = (one: Element | null): string => {
    for (let box = one; box !== null; box = box.parentElement) {
      const { backgroundColor } = getComputedStyle(box);
      if (!isClear(backgroundColor)) return backgroundColor;
    }
    return getComputedStyle(document.documentElement).backgroundColor;
  };
  const found: { text: string; ink: string; paper: string }[] = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
    const parent = node.parentElement;
    const text = (node.textContent ?? '').trim();
    if (text === '' || parent === null || parent.closest('.unseen, script, noscript, svg, :disabled, canvas') || !parent.checkVisibility({ visibilityProperty: true })) continue;
    found.push({ text: text.slice(0, 60), ink: hex(getComputedStyle(parent).color), paper: hex(behind(parent)) });
  }
  return found;
});

/** The colour that the system lays behind words in forced colours, as #rrggbb. */
export const systemPaper = (page: Page): Promise<string> => page.evaluate(() => {
  const probe = document.createElement('i');
  probe.style.color = 'Canvas';
  document.body.append(probe);
  const { color } = getComputedStyle(probe);
  probe.remove();
  return `#${(color.match(/\d+/g) ?? []).slice(0, 3).map((part) => Number(part).toString(16).padStart(2, '0')).join('')}`;
});

/** Elements that move by themselves, or would on a change. */
export const moving = (page: Page): Promise<string[]> => page.evaluate(() => {
  const running = document.getAnimations().map((one) => `runs: ${(one as CSSAnimation).animationName ?? one.id}`);
  const would = [...document.querySelectorAll('body *')].filter((one) => {
    const { transitionDuration, animationName, scrollBehavior } = getComputedStyle(one);
    return animationName !== 'none' || scrollBehavior === 'smooth' || transitionDuration.split(', ').some((time) => parseFloat(time) > 0);
  });
  return [...running, ...would.map((one) => `${one.tagName} ${one.textContent ?? ''}`)];
});

export interface Stop {
  what: string;
  /** Over 0: further on in the document than the stop before it. */
  order: number;
  /** The middle of it is covered, or out of the window. */
  hidden: boolean;
  ring: { px: number; ink: string; paper: string } | null;
}

/** More than any page has. */
const MOST_STOPS = 400;

/** Where Tab goes, from the beginning until it comes round, or for the first few stops; throws when it does not come round. */
export async function focusStops(page: Page, upTo = MOST_STOPS): Promise<Stop[]> {
  await page.evaluate(() => {
    (document.activeElement as HTMLElement | null)?.blur();
    // From the very beginning: a page gives its heading the focus.
    const first = document.createElement('span');
    first.tabIndex = -1;
    document.body.prepend(first);
    first.focus();
    (globalThis as unknown as { stopBefore: Element | null }).stopBefore = null;
  });
  const stops: Stop[] = [];
  for (let count = 0; count < upTo; count += 1) {
    await page.keyboard.press('Tab');
    const stop = await page.evaluate(inTheFocus);
    if (stop === null) return stops;
    stops.push(stop);
  }
  if (upTo < MOST_STOPS) return stops;
  throw new Error(`Tab does not come round: ${stops.slice(-4).map(({ what }) => what).join(', ')}`);
}

/** Runs in the page. */
function inTheFocus(): Stop | null {
  const state = globalThis as unknown as { stopBefore: Element | null; firstStop: Element | null };
  const one = document.activeElement as HTMLElement | null;
  if (one === null || one === document.body) return null;
  if (state.stopBefore === null) state.firstStop = one;
  else if (one === state.firstStop) return null;
  const hex = (colour: string): string => `#${(colour.match(/[\d.]+/g) ?? []).slice(0, 3).map((part) => Math.round(Number(part)).toString(16).padStart(2, '0')).join('')}`;
  const before = state.stopBefore;
  state.stopBefore = one;
  const order = before === null || before.compareDocumentPosition(one) & Node.DOCUMENT_POSITION_FOLLOWING ? 1 : -1;
  // A control that is out of sight for the eye shows its focus on what stands for it.
  const shown = one.closest('.unseen') === null ? one : (one.closest('label, section') ?? one);
  const ringed = [one, ...(shown === one ? [] : [...shown.querySelectorAll('*'), shown])].find((each) => getComputedStyle(each).outlineStyle !== 'none');
  const { left, top, width, height } = (shown === one ? one : (one.closest('label') ?? one)).getBoundingClientRect();
  const [x, y] = [left + width / 2, top + Math.min(height / 2, 40)];
  const over = document.elementFromPoint(x, y);
  const hidden = over === null || !(shown.contains(over) || over.contains(shown) || over.closest('label')?.contains(one));
  let paper = 'rgba(0, 0, 0, 0)';
  for (let box: Element | null = shown.parentElement; box !== null && /, 0\)$|transparent/.test(paper); box = box.parentElement) paper = getComputedStyle(box).backgroundColor;
  const what = `${one.tagName} ${(one.getAttribute('aria-label') ?? one.textContent ?? '').slice(0, 50)}`;
  if (ringed === undefined) return { what, order, hidden, ring: null };
  const { outlineColor, outlineWidth } = getComputedStyle(ringed);
  return { what, order, hidden, ring: { px: parseFloat(outlineWidth), ink: hex(outlineColor), paper: hex(/, 0\)$|transparent/.test(paper) ? getComputedStyle(document.documentElement).backgroundColor : paper) } };
}
