import { createRequire } from 'node:module';
import { crc32, deflateSync, inflateSync } from 'node:zlib';
import { refusal } from '../../../core/refusal.ts';

/** The picture of a seal as a PDF holds it: entries of its image dictionary and its bytes, its transparency beside. */
export interface SealImage {
  readonly width: number;
  readonly height: number;
  readonly entries: string;
  readonly data: Uint8Array;
  /** Opacity, 8 bits a pixel, deflated; null where the picture has no alpha channel. */
  readonly alpha: Uint8Array | null;
}

/** Longest file of a seal, in bytes, and most pixels. */
export const longestSeal = 2_000_000;
const mostPixels = 4_000_000;

/** The part of png-js that is used; it carries no types of its own. */
interface Png {
  decodePixels(take: (pixels: Uint8Array) => void): void;
}
const require = createRequire(import.meta.url);

/**
 * Reads the picture of a seal, PNG or JPEG. Everything is held to before it is decoded: length, checksums, pixels,
 * and that a PNG's data unpack to just its pixels. Refuses what is neither, is damaged or too large, and the kinds that
 * are not drawn as they are meant: interlaced PNG, JPEG of four inks, JPEG that a note inside asks to turn.
 */
export async function sealImage(bytes: Uint8Array): Promise<SealImage> {
  if (bytes.length > longestSeal)
    throw refused(`has ${bytes.length} bytes, the limit is ${longestSeal}`, 'Save it with fewer pixels.');
  const file = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length);
  if (file.subarray(0, 8).toString('latin1') === '\x89PNG\r\n\x1a\n') return png(file);
  if (file.length > 2 && file.readUInt16BE(0) === 0xffd8) return jpeg(file);
  throw refused('is neither a PNG nor a JPEG', 'Save the picture as PNG or JPEG.');
}

const refused = (what: string, mend: string) =>
  refusal({ what: `The image of the seal ${what}`, where: { field: 'seal' }, mend: `${mend} Nothing was signed.` });
const damaged = (why: string) => refused(`is damaged: ${why}`, 'Save the picture anew.');

function sized(width: number, height: number): void {
  if (width < 1 || height < 1) throw damaged('it has no pixels');
  if (width * height > mostPixels)
    throw refused(`has ${width} × ${height} pixels, the limit is ${mostPixels}`, 'Save it with fewer pixels.');
}

/** Channels of a PNG's pixel by its colour type (ISO/IEC 15948, table 11.1), and the depths that each may have. */
const kinds: Readonly<Record<number, { readonly channels: number; readonly depths: readonly number[] }>> = {
  0: { channels: 1, depths: [1, 2, 4, 8, 16] },
  2: { channels: 3, depths: [8, 16] },
  3: { channels: 1, depths: [1, 2, 4, 8] },
  4: { channels: 2, depths: [8, 16] },
  6: { channels: 4, depths: [8, 16] },
};

/** A PDF takes a PNG's rows as they are; only an alpha channel has to be taken out of them. */
async function png(file: Buffer): Promise<SealImage> {
  const chunks = chunksOf(file);
  const [head] = chunks;
  if (head?.type !== 'IHDR' || head.data.length !== 13) throw damaged('it does not begin with its size');
  const [width, height] = [head.data.readUInt32BE(0), head.data.readUInt32BE(4)];
  const [depth = 0, type = 0, , , interlaced] = head.data.subarray(8);
  sized(width, height);
  const kind = kinds[type];
  if (!kind?.depths.includes(depth)) throw damaged(`there is no colour type ${type} of ${depth} bits`);
  if (interlaced !== 0) throw refused('is an interlaced PNG', 'Save it without interlacing.');
  const packed = chunks.filter((chunk) => chunk.type === 'IDAT');
  const row = 1 + Math.ceil((width * depth * kind.channels) / 8);
  const rows = unpacked(Buffer.concat(packed.map(({ data }) => data)), row * height);
  for (let at = 0; at < rows.length; at += row)
    if (rows[at]! > 4) throw damaged(`row ${at / row + 1} has no known filter`);
  if (type < 4) {
    if (chunks.some((chunk) => chunk.type === 'tRNS'))
      throw refused('is transparent without an alpha channel', 'Save it as PNG with one (32 bits a pixel).');
    const colours = type === 3 ? palette(chunks) : kind.channels === 1 ? '/DeviceGray' : '/DeviceRGB';
    const entries = `/ColorSpace ${colours}\n/BitsPerComponent ${depth}\n/Filter /FlateDecode\n/DecodeParms <<\n/Predictor 15\n/Colors ${kind.channels}\n/BitsPerComponent ${depth}\n/Columns ${width}\n>>`; // prettier-ignore
    return { width, height, entries, data: deflateSync(rows), alpha: null };
  }
  // Only what was held to goes to the decoder: a second size or a text chunk would reach it unread.
  const bare = Buffer.concat([file.subarray(0, 8), ...[head, ...packed, chunks.at(-1)!].map(({ whole }) => whole)]);
  const pixels = await decoded(bare);
  const [bytes, colours] = [depth / 8, kind.channels - 1];
  const [colour, alpha] = [new Uint8Array(width * height * colours), new Uint8Array(width * height)];
  for (let i = 0; i < alpha.length; i++) {
    const from = i * kind.channels * bytes; // of 16 bits the upper eight are kept
    for (let c = 0; c < colours; c++) colour[i * colours + c] = pixels[from + c * bytes]!;
    alpha[i] = pixels[from + colours * bytes]!;
  }
  const entries = `/ColorSpace ${colours === 1 ? '/DeviceGray' : '/DeviceRGB'}\n/BitsPerComponent 8\n/Filter /FlateDecode`;
  return { width, height, entries, data: deflateSync(colour), alpha: deflateSync(alpha) };
}

interface Chunk {
  readonly type: string;
  readonly data: Buffer;
  readonly whole: Buffer;
}

/** Chunks up to the end, each against its checksum. */
function chunksOf(file: Buffer): readonly Chunk[] {
  const chunks: Chunk[] = [];
  for (let at = 8; chunks.at(-1)?.type !== 'IEND';) {
    const length = at + 12 <= file.length ? file.readUInt32BE(at) : Infinity;
    const end = at + 12 + length;
    if (end > file.length) throw damaged('it ends too early');
    if (crc32(file.subarray(at + 4, end - 4)) !== file.readUInt32BE(end - 4))
      throw damaged(`a checksum does not fit at byte ${at}`);
    chunks.push({ type: file.toString('latin1', at + 4, at + 8), data: file.subarray(at + 8, end - 4), whole: file.subarray(at, end) }); // prettier-ignore
    at = end;
  }
  return chunks;
}

function unpacked(packed: Uint8Array, length: number): Uint8Array {
  let rows: Uint8Array;
  try {
    rows = inflateSync(packed, { maxOutputLength: length });
  } catch (error) {
    throw damaged(`its pixels cannot be unpacked (${error instanceof Error ? error.message : String(error)})`);
  }
  if (rows.length !== length) throw damaged(`it has ${rows.length} bytes of pixels and needs ${length}`);
  return rows;
}

function palette(chunks: readonly Chunk[]): string {
  const colours = chunks.find(({ type }) => type === 'PLTE')?.data;
  if (!colours || colours.length % 3 !== 0 || colours.length < 3 || colours.length > 768)
    throw damaged('it has no palette');
  return `[/Indexed /DeviceRGB ${colours.length / 3 - 1} <${colours.toString('hex')}>]`;
}

function decoded(bare: Buffer): Promise<Uint8Array> {
  const Decoder = require('png-js') as new (file: Uint8Array) => Png;
  return new Promise((resolve) => new Decoder(bare).decodePixels(resolve));
}

/** A PDF takes a JPEG as it is. What a camera wrote beside the pixels (place, maker, a small copy) is left out. */
function jpeg(file: Buffer): SealImage {
  const kept = [file.subarray(0, 2)];
  let size: { readonly width: number; readonly height: number; readonly colours: string } | null = null;
  let at = 2;
  for (;;) {
    while (file[at] === 0xff && file[at + 1] === 0xff) at += 1;
    const marker = file[at] === 0xff ? file[at + 1] : undefined;
    const length = at + 4 <= file.length ? file.readUInt16BE(at + 2) : 0;
    const segment = file.subarray(at, at + 2 + length);
    if (marker === undefined || length < 2 || at + 2 + length > file.length) throw damaged('its segments do not follow on each other'); // prettier-ignore
    if (marker === 0xda) break;
    const isFrame = marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
    if (isFrame) size = frame(marker, segment, size !== null);
    if (marker === 0xe1) upright(segment);
    // Of the segments of applications, Adobe's says how colours are coded; the others and comments are no pixels.
    if (marker === 0xee || !((marker >= 0xe0 && marker <= 0xef) || marker === 0xfe)) kept.push(segment);
    at += 2 + length;
  }
  if (!size) throw damaged('it does not say its size');
  const end = file.lastIndexOf('\xff\xd9', undefined, 'latin1');
  if (end < at) throw damaged('it ends too early');
  const { width, height, colours } = size;
  const data = Buffer.concat([...kept, file.subarray(at, end + 2)]);
  return {
    width,
    height,
    entries: `/ColorSpace ${colours}\n/BitsPerComponent 8\n/Filter /DCTDecode`,
    data,
    alpha: null,
  };
}

function frame(marker: number, segment: Buffer, again: boolean) {
  if (again || segment.length < 10) throw damaged('its size is not one');
  if (marker > 0xc2 || segment[4] !== 8)
    throw refused('is a JPEG of a rare kind', 'Save it as baseline or progressive JPEG of 8 bits.');
  const [height, width, channels] = [segment.readUInt16BE(5), segment.readUInt16BE(7), segment[9]];
  sized(width, height);
  if (channels !== 1 && channels !== 3)
    throw refused(`is a JPEG of ${channels} colours`, 'Save it in grey or as RGB, not in printing inks.');
  return { width, height, colours: channels === 1 ? '/DeviceGray' : '/DeviceRGB' };
}

/** Refuses a picture that lies on its side and says so in a note (Exif, tag 0x0112), which a PDF does not read. */
function upright(segment: Buffer): void {
  const tiff = segment.subarray(10);
  if (segment.toString('latin1', 4, 10) !== 'Exif\0\0' || tiff.length < 10) return;
  const little = tiff.toString('latin1', 0, 2) === 'II';
  const short = (at: number): number => (at + 2 > tiff.length ? 0 : little ? tiff.readUInt16LE(at) : tiff.readUInt16BE(at)); // prettier-ignore
  const first = little ? tiff.readUInt32LE(4) : tiff.readUInt32BE(4);
  for (let entry = first + 2; entry < first + 2 + 12 * short(first) && entry + 12 <= tiff.length; entry += 12)
    if (short(entry) === 0x0112 && short(entry + 8) > 1)
      throw refused('lies on its side and only says so in a note', 'Turn it upright in an image program and save it.');
}
