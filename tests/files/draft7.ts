// JSON Schema draft 7 (json-schema.org, "Validation"), as far as our schemas use it: written here from the specification,
// so that they are read by something that has never seen the schemas they are made from. A keyword it does not know throws.

type Schema = { [keyword: string]: unknown };
type Check = (wanted: never, value: unknown, root: Schema, schema: Schema) => boolean;

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null && !Array.isArray(value);
const typeOf = (value: unknown): string => (value === null ? 'null' : Array.isArray(value) ? 'array' : typeof value);
const list = (values: Schema[], value: unknown, root: Schema) => values.filter((schema) => valid(schema, value, root)).length;
const ignored = () => true;

const checks: Record<string, Check> = {
  $schema: ignored, definitions: ignored, description: ignored, default: ignored, $id: ignored, id: ignored,
  $ref: (name: string, value, root) => valid((root.definitions as Record<string, Schema>)[name.replace('#/definitions/', '')]!, value, root),
  type: (type: string, value) => (type === 'integer' ? Number.isInteger(value) : typeOf(value) === type),
  const: (wanted, value) => value === wanted,
  enum: (words: unknown[], value) => words.includes(value),
  minimum: (least: number, value) => typeof value !== 'number' || value >= least,
  maximum: (most: number, value) => typeof value !== 'number' || value <= most,
  maxLength: (most: number, value) => typeof value !== 'string' || Array.from(value).length <= most,
  pattern: (pattern: string, value) => typeof value !== 'string' || new RegExp(pattern, 'u').test(value),
  minItems: (least: number, value) => !Array.isArray(value) || value.length >= least,
  maxItems: (most: number, value) => !Array.isArray(value) || value.length <= most,
  items: (schema: Schema, value, root) => !Array.isArray(value) || value.every((item) => valid(schema, item, root)),
  required: (keys: string[], value) => !isObject(value) || keys.every((key) => Object.hasOwn(value, key)),
  properties: (schemas: Record<string, Schema>, value, root) => !isObject(value) || Object.entries(schemas).every(([key, schema]) => !Object.hasOwn(value, key) || valid(schema, value[key], root)),
  additionalProperties: (allowed: boolean, value, _, schema) => allowed || !isObject(value) || Object.keys(value).every((key) => Object.hasOwn(schema.properties as object, key)),
  anyOf: (schemas: Schema[], value, root) => list(schemas, value, root) > 0,
  oneOf: (schemas: Schema[], value, root) => list(schemas, value, root) === 1,
  allOf: (schemas: Schema[], value, root) => list(schemas, value, root) === schemas.length,
};

export function valid(schema: Schema, value: unknown, root: Schema = schema): boolean {
  // Beside $ref nothing counts in draft 7.
  const keywords = '$ref' in schema ? ['$ref'] : Object.keys(schema);
  return keywords.every((keyword) => {
    const check = checks[keyword];
    if (check === undefined) throw new Error(`the keyword ${keyword} is not known here`);
    return check(schema[keyword] as never, value, root, schema);
  });
}
