import * as z from 'zod';
import { text } from './text-field.ts';

/** A file of readings as it came; its content lies in the store under its hash. */
export const recordField = z.strictObject({
  name: text,
  /** SHA-256 of its bytes. */
  hash: z.string().regex(/^[0-9a-f]{64}$/, '64 hex digits'),
  bytes: z.number().int().min(0),
  /** Names of its columns, by which another file of the same layout is known. */
  layout: z.string().max(2000).optional(),
});

/** A column of such a file, from 1. */
export const columnField = z.number().int().min(1).max(1000);

export type RecordOf = z.infer<typeof recordField>;
