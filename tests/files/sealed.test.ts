// A sealed scenario flies the very run and holds nothing that its instructor wrote about it.
import { describe, expect, it } from 'vitest';
import { FILE_SCHEMAS, INSTRUCTORS, ready, scriptedRecord, sealed, scenarioSchema, shapeOf, verify } from '../../sim/files/index.js';
import { flyTrainee, MODEL_VERSION } from '../../sim/index.js';
import { AIRFRAME, drill } from '../sim/bench.js';

const WORDS = { title: 'SECRET title', notes: 'SECRET notes', skill: 'SECRET skill', order: 77, passes: ['prompt'], fails: ['never'], $schema: 'SECRET.json' };

describe('sealed', () => {
  const told = { ...drill('set-16-from-4'), ...WORDS };
  it('drops title, notes, skill, place and trainees, and is still a scenario', () => {
    const bare = sealed(told);
    expect(JSON.stringify(bare)).not.toMatch(/SECRET|77|prompt|never/);
    expect(scenarioSchema.parse(bare)).toEqual(bare);
    expect({ ...told, ...bare, ...WORDS }).toEqual(told);
  });
  it('knows every key: a new one is either flown, or the instructor’s', () => {
    const shape = shapeOf(FILE_SCHEMAS.scenario);
    if (shape.kind !== 'object') throw new Error('a scenario is no object');
    const flown = ['format', 'title', 'brief', 'parameters', 'group', 'airframe', 'start', 'speedHold', 'role', 'training', 'mainDrive', 'pointerNoise', 'task', 'faults', 'events', 'recognition', 'procedure', 'plan'];
    expect([...shape.keys.keys()].filter((key) => !flown.includes(key)).sort()).toEqual([...INSTRUCTORS].sort());
  });
  it('flies to the same hash, and its record proves itself', () => {
    const bare = ready(sealed(told), AIRFRAME);
    const [with_, without] = [flyTrainee(told, AIRFRAME, 3, 'steady'), flyTrainee(bare, AIRFRAME, 3, 'steady')];
    expect(without.flight).toEqual(with_.flight);
    const { end, hash, outcome, score } = without.flight;
    const record = scriptedRecord({ model: MODEL_VERSION, app: 't', seed: 3, airframe: AIRFRAME, scenario: bare, commands: without.commands, end, hash, outcome, score });
    expect(verify(record).ok).toBe(true);
  });
});
