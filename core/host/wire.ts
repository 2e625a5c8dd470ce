import { utf8ToBytes } from '@noble/hashes/utils.js';
import { refusal } from '../refusal.ts';

// Every machine that core runs on has it; core's types know neither page nor Node.
declare const TextDecoder: new (
  label: string,
  options: { readonly fatal: boolean },
) => { decode(bytes: Uint8Array): string };

/** Media type of a message on the wire. A page of another origin cannot send it without asking first. */
export const wireType = 'application/vnd.stillplate.message';

/** Names that stand for something on the wire; an object that has one itself is wrapped. */
const mark = /^\$(bytes|plain)$/;

/**
 * A message of JSON values and Uint8Array as bytes: the length of the JSON (4 bytes, big end first), the JSON as
 * UTF-8, then the content of every Uint8Array in the order met. In the JSON each stands as {"$bytes": length};
 * an object that has a key `$bytes` or `$plain` itself stands as {"$plain": it}. Half the copies of base64, and no
 * third more.
 */
export function toWire(value: unknown): Uint8Array {
  const parts: Uint8Array[] = [];
  const json = utf8ToBytes(JSON.stringify(marked(value, parts)) ?? 'null');
  const wire = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 4 + json.length));
  new DataView(wire.buffer).setUint32(0, json.length);
  wire.set(json, 4);
  let at = 4 + json.length;
  for (const part of parts) {
    wire.set(part, at);
    at += part.length;
  }
  return wire;
}

/** The message of `toWire`. Refuses bytes that are none: cut off, too long, no JSON. */
export function fromWire(wire: Uint8Array): unknown {
  if (wire.length < 4) throw noMessage();
  const length = new DataView(wire.buffer, wire.byteOffset, 4).getUint32(0);
  if (4 + length > wire.length) throw noMessage();
  let at = 4 + length;
  const next = (size: unknown): Uint8Array => {
    if (typeof size !== 'number' || !Number.isInteger(size) || size < 0 || at + size > wire.length) throw noMessage();
    at += size;
    return wire.slice(at - size, at);
  };
  const value = unmarked(jsonOf(wire.subarray(4, 4 + length)), next);
  if (at !== wire.length) throw noMessage();
  return value;
}

function jsonOf(bytes: Uint8Array): unknown {
  try {
    return JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    throw noMessage();
  }
}

const noMessage = () =>
  refusal({
    what: 'What came is no message of Stillplate',
    mend: 'Load the page anew: it may be older than the program.',
  });

function marked(value: unknown, parts: Uint8Array[]): unknown {
  if (value instanceof Uint8Array) {
    parts.push(value);
    return { $bytes: value.length };
  }
  if (Array.isArray(value)) return value.map((inner) => marked(inner, parts));
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value);
  const plain = Object.fromEntries(entries.map(([key, inner]) => [key, marked(inner, parts)]));
  return entries.some(([key]) => mark.test(key)) ? { $plain: plain } : plain;
}

function unmarked(value: unknown, next: (size: unknown) => Uint8Array): unknown {
  if (Array.isArray(value)) return value.map((inner) => unmarked(inner, next));
  if (typeof value !== 'object' || value === null) return value;
  if (Object.hasOwn(value, '$bytes')) return next((value as { $bytes: unknown }).$bytes);
  const plain = Object.hasOwn(value, '$plain') ? (value as { $plain: unknown }).$plain : value;
  if (typeof plain !== 'object' || plain === null) throw noMessage();
  return Object.fromEntries(Object.entries(plain).map(([key, inner]) => [key, unmarked(inner, next)]));
}
