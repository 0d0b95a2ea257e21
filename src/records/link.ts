/**
 * A text in the fragment of an address: deflated (RFC 1951) and written in the letters of base64url (RFC 4648, section 5).
 * The way back takes it as any hostile file: capped before and while it is inflated, UTF-8 or nothing. What the text says is
 * checked by its reader.
 */
import { MOST_BYTES } from '../text/index.js';

/**
 * Longest code that is made, letters. Common practice, no source: mail and chat programs cut longer addresses, and a file
 * does better. Longer ones are still read, up to what a whole file may come to.
 */
export const LONGEST_MADE = 30_000;
/** Base64url needs four letters for three bytes; deflate adds at most a few bytes a block to what does not shrink. */
const LONGEST_READ = Math.ceil((MOST_BYTES * 4) / 3) + 1000;

/** `why` is a sentence for the page. */
export type Unlinked = { readonly ok: true; readonly text: string } | { readonly ok: false; readonly why: string };

/** A text as a code; any length. */
export async function linkCode(text: string): Promise<string> {
  const packed = await collected(new Blob([text]).stream().pipeThrough(new CompressionStream('deflate-raw')), Infinity);
  let letters = '';
  for (let from = 0; from < packed.length; from += 3 * 4096) letters += btoa(String.fromCharCode(...packed.subarray(from, from + 3 * 4096)));
  return letters.replace(/\+/g, '-').replace(/\//g, '_').replace(/=+$/, '');
}

/** The text of a code, or what is wrong with it. Never rejects. */
export async function textOfLink(code: string): Promise<Unlinked> {
  if (code === '') return no('nothing stands in it.');
  if (code.length > LONGEST_READ) return no(`it is longer than ${LONGEST_READ} letters.`);
  const odd = /[^A-Za-z0-9_-]/.exec(code);
  if (odd !== null) return no(`a sign stands in it that no link has, at place ${odd.index + 1}.`);
  if (code.length % 4 === 1) return no('its end is missing.');
  const packed = Uint8Array.from(atob(code.replace(/-/g, '+').replace(/_/g, '/')), (letter) => letter.charCodeAt(0));
  let bytes: Uint8Array<ArrayBuffer>;
  try {
    bytes = await collected(new Blob([packed]).stream().pipeThrough(new DecompressionStream('deflate-raw')), MOST_BYTES);
  } catch (problem) {
    return no(problem instanceof TooMuch ? `it opens to more than ${MOST_BYTES} bytes.` : 'it is cut short or altered.');
  }
  try {
    return { ok: true, text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch {
    return no('it opens to something that is no text.');
  }
}

const no = (why: string): Unlinked => ({ ok: false, why: `This link does not open: ${why}` });

class TooMuch extends Error {}

/** All bytes of a stream. @throws TooMuch as soon as there are more than `most`, and reads no further */
async function collected(stream: ReadableStream<Uint8Array<ArrayBuffer>>, most: number): Promise<Uint8Array<ArrayBuffer>> {
  const reader = stream.getReader();
  const parts: Uint8Array[] = [];
  let length = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    length += value.length;
    if (length > most) {
      void reader.cancel().catch(() => undefined);
      throw new TooMuch();
    }
    parts.push(value);
  }
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
