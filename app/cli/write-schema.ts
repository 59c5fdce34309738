import { resolve } from 'node:path';
import { setupSchemaText } from './setup-schema-text.ts';
import { writeOutput } from './write-output.ts';

/** Writes assets/setup.schema.json: `npm run schema`. */
writeOutput(resolve(import.meta.dirname, '../../assets/setup.schema.json'), setupSchemaText());
