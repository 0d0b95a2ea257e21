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
export type FileKind = keyof typeof FILE_SCHEMAS;

/**
 * One JSON Schema (draft 7) for each kind of file, of what may be written (defaults may be left out). Checks across keys
 * have no words in JSON Schema: a file may pass here and still be refused by Evenhand, never the other way round.
 */
export function jsonSchemas(): Record<FileKind, object> {
  const make = (schema: z.ZodMiniType) => z.toJSONSchema(schema, { target: 'draft-7', io: 'input', override: ({ jsonSchema }) => withUnit(jsonSchema) });
  return {
    airframe: make(airframeSchema), scenario: make(scenarioSchema), inputs: make(inputsSchema), record: make(recordSchema), trainee: make(traineeSchema),
    set: make(setSchema), course: make(courseSchema),
  };
}

/** The unit goes into the description, as JSON Schema has no word for it. */
function withUnit(schema: Record<string, unknown>): void {
  const { unit, description } = schema;
  delete schema['unit'];
  if (typeof unit === 'string' && unit !== '1') schema['description'] = `${typeof description === 'string' ? `${description} ` : ''}[${unit}]`;
}
