import type { z } from 'zod';
import { setupSchema } from '../setup/schema/setup.ts';

/** What is looked at of a schema; zod's own types are too wide to walk by. */
interface Def {
  readonly type: string;
  readonly shape?: Readonly<Record<string, z.ZodType>>;
  readonly element?: z.ZodType;
  readonly innerType?: z.ZodType;
  readonly options?: readonly z.ZodType[];
  readonly discriminator?: string;
}
const defOf = (schema: z.ZodType): Def => schema._zod.def as unknown as Def;

/** Default of each schema that has one, as the text that JSON makes of it. */
const defaults = new WeakMap<z.ZodType, string>();
const defaultOf = (schema: z.ZodType): string => {
  const before = defaults.get(schema);
  if (before !== undefined) return before;
  const text = JSON.stringify(schema.parse(undefined));
  defaults.set(schema, text);
  return text;
};

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The branch of a union that a value is of. */
const branchOf = ({ options = [], discriminator }: Def, value: unknown): z.ZodType | undefined =>
  options.find((option) => {
    const word = discriminator !== undefined && isRecord(value) ? value[discriminator] : undefined;
    const literal = discriminator === undefined ? undefined : defOf(option).shape?.[discriminator];
    return word !== undefined && literal ? literal.safeParse(word).success : option.safeParse(value).success;
  });

const leanObject = (shape: Readonly<Record<string, z.ZodType>>, value: Readonly<Record<string, unknown>>) => {
  const lean: Record<string, unknown> = {};
  for (const [key, field] of Object.entries(shape)) {
    const { type } = defOf(field);
    const hasDefault = type === 'default' || type === 'prefault';
    if (!hasDefault || defaultOf(field) !== JSON.stringify(value[key])) lean[key] = leanValue(field, value[key]);
  }
  return lean;
};

const leanValue = (schema: z.ZodType, value: unknown): unknown => {
  const def = defOf(schema);
  if (def.innerType) return leanValue(def.innerType, value);
  if (def.shape && isRecord(value)) return leanObject(def.shape, value);
  const { element } = def;
  if (element && Array.isArray(value)) return value.map((item) => leanValue(element, item));
  const branch = def.options && branchOf(def, value);
  return branch ? leanValue(branch, value) : value;
};

/** A setup without what reading it fills in anyway: every field that has the value that the schema gives it by itself. */
export const leanDocument = (setup: z.output<typeof setupSchema>): unknown => leanValue(setupSchema, setup);
