// What two runs are compared by that should look the same.
import type { Page } from 'playwright-core';

/** Everything that can be seen of a page. */
export const look = (page: Page): Promise<Record<string, string>> => page.evaluate(() => {
  const canvas = document.querySelector('canvas')!;
  const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height);
  // FNV-1a over the pixels: a difference in one of them is a difference here.
  let sum = 0x811c9dc5;
  for (const byte of data) sum = Math.imul(sum ^ byte, 0x01000193) >>> 0;
  return { pixels: sum.toString(16), page: document.body.innerHTML, title: document.title, address: location.hash };
});
