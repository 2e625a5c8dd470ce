import { refusal } from '../refusal.ts';

// Every machine that core runs on has it; core's types know neither page nor Node.
declare const TextDecoder: new (
  label: string,
  options: { readonly fatal: boolean },
) => { decode(bytes: Uint8Array): string };

/**
 * Text of a record's bytes: UTF-8 or UTF-16 with its mark, UTF-8 without one, else Windows-1252, which loggers write for a
 * degree sign. Refuses what holds zero bytes: that is no text.
 */
export function textOfRecord(bytes: Uint8Array): string {
  const [a, b] = bytes;
  if (a === 0xff && b === 0xfe) return new TextDecoder('utf-16le', { fatal: false }).decode(bytes);
  if (a === 0xfe && b === 0xff) return new TextDecoder('utf-16be', { fatal: false }).decode(bytes);
  if (bytes.subarray(0, 100_000).includes(0))
    throw refusal({
      what: 'This file is no text',
      where: { field: 'record' },
      mend: 'Export the record as CSV or TSV, with one reading a line.',
    });
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252', { fatal: false }).decode(bytes);
  }
}
