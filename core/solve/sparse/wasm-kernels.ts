import type { FrontKernels, MakeKernels } from './front-kernels.ts';
import { frontsWasm } from './fronts-wasm.ts';
import { plainKernels } from './plain-kernels.ts';

/** The dense kernels with two doubles at a time where WebAssembly may run, else in plain TypeScript; the same bits. A page
 *  whose content policy has no 'wasm-unsafe-eval' refuses to compile, and an engine without its vectors does too: both
 *  are no fault of the model, and the slower kernels serve. */
export function frontKernels(count: number): FrontKernels {
  const module = compiledOnce();
  return module ? wasmKernels(module, count) : plainKernels(count);
}

/** The kernels of WebAssembly, or undefined where it may not run. */
export function wasmKernelsHere(): MakeKernels | undefined {
  const module = compiledOnce();
  return module ? (count) => wasmKernels(module, count) : undefined;
}

/** What is used of WebAssembly: core is compiled without the types of page and Node. */
interface WebAssemblyShape {
  readonly Module: new (bytes: Uint8Array) => object;
  readonly Instance: new (module: object, imports: object) => { readonly exports: unknown };
  readonly Memory: new (size: { initial: number }) => { readonly buffer: ArrayBuffer };
}

/** As build/wasm/fronts.as: addresses in bytes. */
interface Exports {
  clear(w: number, b: number, panel: number, update: number): void;
  addUpdate(
    child: number,
    b: number,
    runs: number,
    runCount: number,
    w: number,
    further: number,
    panel: number,
    update: number,
  ): void;
  factor(w: number, b: number, panel: number, update: number, diagonal: number, least: number, scratch: number): number;
  lower(w: number, b: number, panel: number, vector: number, x: number, rows: number, t: number): void;
  upper(w: number, b: number, panel: number, vector: number, x: number, rows: number, t: number): void;
}

const wasm = (globalThis as { readonly WebAssembly?: WebAssemblyShape }).WebAssembly;

let compiled: object | null | undefined;

function compiledOnce(): object | null {
  if (compiled !== undefined) return compiled;
  try {
    compiled = wasm ? new wasm.Module(bytesOf(frontsWasm)) : null;
  } catch {
    compiled = null;
  }
  return compiled;
}

function wasmKernels(module: object, count: number): FrontKernels {
  const memory = new wasm!.Memory({ initial: Math.ceil((8 * count) / 65536) });
  const { clear, addUpdate, factor, lower, upper } = new wasm!.Instance(module, { env: { memory } }).exports as Exports;
  return {
    doubles: new Float64Array(memory.buffer, 0, count),
    integers: new Int32Array(memory.buffer, 0, 2 * count),
    clear: ({ w, b, panel, update }) => clear(w, b, 8 * panel, 8 * update),
    addUpdate: (child, b, runs, runCount, { w, b: further, panel, update }) =>
      addUpdate(8 * child, b, 4 * runs, runCount, w, further, 8 * panel, 8 * update),
    factor: ({ w, b, panel, update }, diagonal, least, scratch) =>
      factor(w, b, 8 * panel, 8 * update, 8 * diagonal, least, 8 * scratch),
    lower: ({ w, b, panel }, x, own, rows, t) => lower(w, b, 8 * panel, 8 * x, 8 * (x + own), 4 * rows, 8 * t),
    upper: ({ w, b, panel }, x, own, rows, t) => upper(w, b, 8 * panel, 8 * x, 8 * (x + own), 4 * rows, 8 * t),
  };
}

const digits = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';

/** The bytes of a text in base64 (RFC 4648, section 4). */
function bytesOf(text: string): Uint8Array {
  const length = text.length - (text.endsWith('==') ? 2 : text.endsWith('=') ? 1 : 0);
  const bytes = new Uint8Array(Math.floor((length * 3) / 4));
  let bits = 0;
  let held = 0;
  let end = 0;
  for (let i = 0; i < length; i++) {
    bits = ((bits << 6) | digits.indexOf(text[i]!)) & 0xffff;
    held += 6;
    if (held >= 8) bytes[end++] = (bits >> (held -= 8)) & 255;
  }
  return bytes;
}
