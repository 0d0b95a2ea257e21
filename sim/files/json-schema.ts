/** The file schemas as JSON Schemas, for editors: completion, ranges and meanings while a file is typed. */
import * as z from 'zod/mini';
import { airframeSchema } from './airframe.js';
import { courseSchema } from './course.js';
import { inputsSchema } from './inputs.js';
import { recordSchema } from './record.js';
import { scenarioSchema } from './scenario.js';
import { setSchema } from './set.js';
import { traineeSchema } from './trainee.js';

/** The kinds of files, each with its schema. */
export const FILE_SCHEMAS = { airframe: airframeSchema, scenario: scenarioSchema, inputs: inputsSchema, record: recordSchema, trainee: traineeSchema, set: setSchema, course: courseSchema };
/** The word by which `keyTable`, `jsonSchemas` and the command line know a file. */
export type FileKind = keyof typeof FILE_SCHEMAS;

/**
 * One JSON Schema (draft 7) for each kind of file, of what may be written (defaults may be left out). Checks across keys
 * have no words in JSON Schema: a file may pass here and still be refused by Evenhand, never the other way round.
 */
export function jsonSchemas(): Record<FileKind, object> {
  const make = (schema: z.ZodMiniType) => z.toJSONSchema(schema, { target: 'draft-7', io: 'input', override: ({ jsonSchema }) => withUnit(jsonSchema) });
  return {
    airframe: make(airframeSchema), scenario: takingParameters(make(scenarioSchema)), inputs: make(inputsSchema), record: make(recordSchema), trainee: make(traineeSchema),
    set: make(setSchema), course: make(courseSchema),
  };
}

/** In a scenario a parameter may stand for any number, but in what declares the parameters. */
function takingParameters(schema: object): object {
  const taken = { type: 'object', properties: { parameter: { type: 'string', description: 'Name of a parameter of this file.' } }, required: ['parameter'], additionalProperties: false };
  const open = (node: unknown): unknown => {
    if (Array.isArray(node)) return node.map(open);
    if (node === null || typeof node !== 'object') return node;
    const { type, minimum, maximum, description, default: fallback, ...rest } = node as Record<string, unknown>;
    if (type === 'number' && 'const' in rest) return node;
    if (type === 'number' || type === 'integer') return { description, ...(fallback === undefined ? {} : { default: fallback }), anyOf: [{ type, minimum, maximum, ...rest }, { $ref: '#/definitions/taken' }] };
    return Object.fromEntries(Object.entries(node).map(([key, inner]) => [key, key === 'parameters' ? inner : open(inner)]));
  };
  const opened = open(schema) as { definitions?: object };
  return { ...opened, definitions: { ...opened.definitions, taken } };
}

/** The unit goes into the description, as JSON Schema has no word for it. */
function withUnit(schema: Record<string, unknown>): void {
  const { unit, description } = schema;
  delete schema['unit'];
  if (typeof unit === 'string' && unit !== '1') schema['description'] = `${typeof description === 'string' ? `${description} ` : ''}[${unit}]`;
}
