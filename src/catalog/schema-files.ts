import { jsonSchemaOf } from '../schema/json-schema.ts';
import { RECORD_SHAPES, WORD_SHAPES } from './shapes.ts';

/** One JSON Schema for the editor: what it is called and which files below content/ it describes. */
export interface SchemaFile {
  readonly name: string;
  readonly pattern: string;
  readonly schema: Readonly<Record<string, unknown>>;
}

/** A schema for every folder of content, records first, then words. */
export function schemaFiles(): SchemaFile[] {
  const records = Object.entries(RECORD_SHAPES).map(([folder, shape]) => ({
    name: folder,
    pattern: `content/${folder}/**/*.json`,
    schema: jsonSchemaOf(shape, `a record of content/${folder}`),
  }));
  const words = Object.entries(WORD_SHAPES).map(([folder, shape]) => ({
    name: `words-${folder}`,
    pattern: `content/words/*/${folder}/**/*.json`,
    schema: jsonSchemaOf(shape, `a record of content/words/<language>/${folder}`),
  }));
  return [...records, ...words];
}
