/**
 * One record a model version, flown once and kept. It must verify for as long as that version can be replayed, here and
 * in a world that has nothing but the language: if this fails, either the model changed (then it needs a new version and
 * a record of its own, and the change is explained) or something is broken.
 */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { recordSchema, verify } from '../../sim/files/index.js';
import { MODEL_VERSION } from '../../sim/index.js';
import { bareModule } from '../bare.js';

const record = recordSchema.parse(JSON.parse(readFileSync(new URL(`model-${MODEL_VERSION}.json`, import.meta.url), 'utf8')));

describe(`the golden record of model ${MODEL_VERSION}`, () => {
  it('verifies', () => {
    expect(verify(record)).toMatchObject({ ok: true, refused: [] });
  });
  it('replays to the same hash in a bare context', async () => {
    const sim = await bareModule(fileURLToPath(new URL('../../sim/index.ts', import.meta.url))) as { replay: (of: unknown) => { hash: string; outcome: string } };
    const flight = sim.replay(record);
    expect(flight.hash).toBe(record.hash);
    expect(flight.outcome).toBe(record.outcome);
  });
});

describe('a record of a model before this one', () => {
  const before = recordSchema.parse(JSON.parse(readFileSync(new URL('model-1.json', import.meta.url), 'utf8')));
  it('is read and shown, its outcome as stored, and refused as not replayable here', () => {
    expect(before.outcome).toBe('caught');
    const said = verify(before);
    expect(said).toMatchObject({ ok: false, replayable: false });
    expect(said.refused.map(({ code }) => code)).toContain('model');
    expect(JSON.stringify(said.refused)).toContain('not replayable here');
  });
});
