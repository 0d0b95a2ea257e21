/** Width of a drawing's place, px, so that its words are as large in a narrow window as in a wide one. */
import { useSignal } from '@preact/signals';
import type { RefObject } from 'preact';
import { useLayoutEffect } from 'preact/hooks';

export function useWidth(place: RefObject<HTMLElement | null>, least: number): number {
  const width = useSignal(Math.max(least, 760));
  useLayoutEffect(() => {
    const host = place.current;
    if (host === null) return;
    const fit = (): void => { if (!matchMedia('print').matches) width.value = Math.max(least, Math.round(host.clientWidth)); };
    fit();
    const watch = new ResizeObserver(fit);
    watch.observe(host);
    return () => watch.disconnect();
  }, []);
  return width.value;
}
