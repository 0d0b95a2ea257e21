// A scenario in an address: what goes in comes out, another implementation reads it, and nothing hostile gets through.
import { Buffer } from 'node:buffer';
import { readFileSync } from 'node:fs';
import { deflateRawSync, inflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { linkCode, LONGEST_MADE, textOfLink } from '../../src/records/link.js';
import { MOST_BYTES, readScenario } from '../../src/text/index.js';
import { AIRFRAME } from '../sim/bench.js';

const packed = (bytes: Uint8Array | string): string => deflateRawSync(bytes).toString('base64url');
const why = async (code: string): Promise<string> => {
  const read = await textOfLink(code);
  return read.ok ? 'opened' : read.why;
};

describe('a link', () => {
  it('gives back every text, letter by letter', async () => {
    await fc.assert(fc.asyncProperty(fc.string({ unit: 'grapheme', maxLength: 3000 }), async (text) => {
      if (text === '') return;
      expect(await textOfLink(await linkCode(text))).toEqual({ ok: true, text: Buffer.from(text).toString('utf8') });
    }), { numRuns: 60 });
  });
  it('is what RFC 1951 and RFC 4648 say: zlib and Buffer read it, and it reads what they write', async () => {
    const text = '{ "format": 1 } // 16° – ok';
    expect(inflateRawSync(Buffer.from(await linkCode(text), 'base64url')).toString('utf8')).toBe(text);
    expect(await textOfLink(packed(text))).toEqual({ ok: true, text });
    // By hand: one stored block (RFC 1951, 3.2.4): final bit, length 2, its complement, "{}"; then RFC 4648 without padding.
    expect(await textOfLink(Buffer.from([1, 2, 0, 0xfd, 0xff, 0x7b, 0x7d]).toString('base64url'))).toEqual({ ok: true, text: '{}' });
  });
  it('stands in a fragment as it is', async () => {
    expect(await linkCode('?>~'.repeat(400) + '\u00ff'.repeat(99))).toMatch(/^[A-Za-z0-9_-]+$/);
  });
  it('holds every shipped drill with room to spare', async () => {
    for (const name of ['set-16-from-4', 'calls-come-in', 'small-and-quick']) {
      const text = readFileSync(new URL(`../../scenarios/drills/${name}.json`, import.meta.url), 'utf8');
      expect((await linkCode(text)).length, name).toBeLessThan(LONGEST_MADE / 10);
    }
  });
});

describe('a hostile link', () => {
  it('is told what is wrong with it', async () => {
    const sound = await linkCode('{ "format": 1 }');
    expect(await why('')).toContain('nothing stands in it');
    expect(await why('ab+/')).toContain('a sign stands in it that no link has, at place 3');
    expect(await why('abcde')).toContain('its end is missing');
    expect(await why(sound.slice(0, -4))).toContain('cut short or altered');
    expect(await why(`AAAA${sound}`)).toContain('cut short or altered');
    expect(await why(packed(Uint8Array.from([0xff, 0xfe, 0x41])))).toContain('no text');
    expect(await why('A'.repeat(2_000_000))).toContain('longer than');
  });
  it('that opens to more than a file may hold is stopped while it opens', async () => {
    const bomb = packed(new Uint8Array(150 * MOST_BYTES).fill(32));
    expect(bomb.length).toBeLessThan(250_000);
    const before = process.memoryUsage().arrayBuffers;
    expect(await why(bomb)).toBe(`This link does not open: it opens to more than ${MOST_BYTES} bytes.`);
    // Were it inflated whole, 150 MB would have been asked for.
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(40 * MOST_BYTES);
  });
  it('at the limit opens, and one byte above does not', async () => {
    expect((await textOfLink(packed(' '.repeat(MOST_BYTES)))).ok).toBe(true);
    expect((await textOfLink(packed(' '.repeat(MOST_BYTES + 1)))).ok).toBe(false);
  });
  it('of any letters never throws', async () => {
    await fc.assert(fc.asyncProperty(fc.string({ unit: fc.constantFrom('A', 'B', 'c', 'z', '0', '9', '-', '_', '=', '/'), maxLength: 200 }), async (code) => {
      expect(typeof (await textOfLink(code)).ok).toBe('boolean');
    }), { numRuns: 300 });
  });
  it('that is a text is then read as any file: depth, unknown keys, prototypes', async () => {
    const found = async (text: string): Promise<string> => {
      const opened = await textOfLink(await linkCode(text));
      if (!opened.ok) throw new Error(opened.why);
      const read = readScenario(opened.text, 'link', () => AIRFRAME);
      return read.ok ? 'sound' : read.problems.map((one) => `${one.path} ${one.found}`).join('\n');
    };
    expect(await found('['.repeat(20_000))).toContain('nested more than 64 deep');
    expect(await found('{ "format": 1, "__proto__": { "title": "x" }, "task": {} }')).toContain('__proto__');
    expect(await found('{ "format": 1, "task": {}, "constructor": 1 }')).toContain('constructor');
    expect(({} as Record<string, unknown>)['title']).toBeUndefined();
  });
});
