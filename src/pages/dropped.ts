/** Files dropped anywhere on the page, as long as a part of it asks for them. */
import { useSignal, type ReadonlySignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';

/** @param take called with what was dropped @returns whether files are held over the page */
export function useDropped(take: (files: readonly File[]) => void): ReadonlySignal<boolean> {
  const over = useSignal(false);
  const now = useRef(take);
  now.current = take;
  useEffect(() => {
    const drag = (event: DragEvent): void => {
      if (!event.dataTransfer?.types.includes('Files')) return;
      event.preventDefault();
      over.value = event.type === 'dragover';
      if (event.type === 'drop') now.current([...event.dataTransfer.files]);
    };
    const names = ['dragover', 'dragleave', 'drop'] as const;
    for (const name of names) addEventListener(name, drag);
    return () => { for (const name of names) removeEventListener(name, drag); };
  }, []);
  return over;
}
