/**
 * Which screen the window is on, as far as a page can tell: its size and its pixels. Another zoom, and most other screens,
 * make another name, and what was measured under one name says nothing of the next.
 */
import { computed, signal } from '@preact/signals';
import { size } from './choices.js';

const nameNow = (): string => `${screen.width}x${screen.height}@${Math.round(devicePixelRatio * 1000) / 1000}`;

export const screenName = signal(nameNow());
/** Inner size of the window, CSS px. */
export const windowSize = signal({ width: innerWidth, height: innerHeight });

export function look(): void {
  screenName.value = nameNow();
  const { width, height } = windowSize.value;
  if (width !== innerWidth || height !== innerHeight) windowSize.value = { width: innerWidth, height: innerHeight };
}

/** A screen of other pixels need not change the size of the window. */
function watchPixels(): void {
  matchMedia(`(resolution: ${devicePixelRatio}dppx)`).addEventListener('change', () => {
    look();
    watchPixels();
  }, { once: true });
}

addEventListener('resize', look);
watchPixels();
// A window that came back may have been carried to another screen of the same size meanwhile.
addEventListener('focus', look);
// Where the browser tells of a move to another screen (Window Management): no resize need come with it.
if (screen instanceof EventTarget) screen.addEventListener('change', look);

/** Measured px a millimetre of this screen at this zoom; null: nobody has laid a card on it. */
export const pxPerMm = computed(() => size.value.screens[screenName.value] ?? null);
