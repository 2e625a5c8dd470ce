import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';

const { cbrt, cos, exp, hypot, log, log10, pow, sin, sinh, tan, tanh, acos, asin, atan, atan2 } = Math;
const functions: readonly ((x: number, y: number) => number)[] = [
  ...[cbrt, cos, exp, log, log10, sin, sinh, tan, tanh, atan].map((f) => (x: number) => f(x)),
  ...[acos, asin].map((f) => (x: number) => f(x / 8)),
  ...[atan2, hypot, pow],
  (x) => pow(x, 3),
];

/**
 * Names the arithmetic of the machine that runs this: 16 hex digits. The language leaves the last bit of sine, power
 * and their like to whoever builds it, so that a browser and Node may differ there. Two machines with one name give the
 * same bits; with two names, results agree to rounding.
 */
export function arithmetic(): string {
  const values = Float64Array.from({ length: 200 }, (_, i) => 0.01 + (7.9 * ((i * 89) % 200)) / 200);
  const given = functions.flatMap((f) => [...values].map((x, i) => f(x, values[(i + 1) % 200]!)));
  return bytesToHex(sha256(new Uint8Array(Float64Array.from(given).buffer))).slice(0, 16);
}
