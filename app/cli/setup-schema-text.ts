import { z } from 'zod';
import { setupSchema } from '../../core/setup/schema/setup.ts';

/** The setup document as JSON Schema text: what a person or an editor may write, defaults left out or not. */
export const setupSchemaText = (): string => {
  const { $schema, ...schema } = z.toJSONSchema(setupSchema, { io: 'input' });
  return `${JSON.stringify({ $schema, title: 'Lampfall setup', ...schema }, null, 2)}\n`;
};
