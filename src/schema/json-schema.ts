import { z } from 'zod';

/**
 * A zod shape as JSON Schema, for the editor.
 *
 * It describes what is written in a file, before quantities become SI; rules that JSON Schema cannot
 * say (a range that runs backwards) are left to the catalog. A `$schema` key is allowed nowhere: the
 * editor is told by folder which schema holds.
 *
 * @source method: JSON Schema, draft 2020-12
 */
export function jsonSchemaOf(shape: z.ZodType, title: string): Readonly<Record<string, unknown>> {
  return { ...z.toJSONSchema(shape, { io: 'input', unrepresentable: 'any' }), title };
}
