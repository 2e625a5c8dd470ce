import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { crc32, deflateSync } from 'node:zlib';
import { beforeAll, describe, expect, it } from 'vitest';
import { openIdentity } from '../../electron/host/sign/open-identity.ts';
import { readSignatures } from '../../electron/host/sign/read-signatures.ts';
import { sealImage } from '../../electron/host/sign/seal-image.ts';
import { signNote } from '../../electron/host/sign/sign-note.ts';
import { writeNote } from '../../electron/host/note/write-note.ts';
import { inFolder } from '../command/in-folder.ts';
import { ran } from '../command/ran.ts';
import { readPdf } from './read-pdf.ts';
import { shortNote } from './short-note.ts';
import { testIdentity } from './test-identity.ts';

const p12 = testIdentity();
const identity = openIdentity(p12, 'pw');
const at = new Date(Date.now() + 60_000);
let plain: Uint8Array;
beforeAll(async () => void (plain = await writeNote(shortNote)));

const chunk = (type: string, data: Uint8Array): Buffer => {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  check.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, check]);
};

interface PngParts {
  readonly width: number;
  readonly height: number;
  readonly type: number;
  readonly depth?: number;
  readonly interlace?: number;
  /** Rows with their filter bytes; whatever it is, it is packed as the pixels. */
  readonly rows: Uint8Array;
  readonly more?: readonly Buffer[];
}

/** A PNG put together by its standard (ISO/IEC 15948), so that each part can be wrong. */
function pngOf({ width, height, type, depth = 8, interlace = 0, rows, more = [] }: PngParts): Buffer {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width);
  head.writeUInt32BE(height, 4);
  head.set([depth, type, 0, 0, interlace], 8);
  const signature = Buffer.from('\x89PNG\r\n\x1a\n', 'latin1');
  return Buffer.concat([signature, chunk('IHDR', head), ...more, chunk('IDAT', deflateSync(rows)), chunk('IEND', Buffer.alloc(0))]); // prettier-ignore
}

/** A ring in blue on nothing, 60 by 40: red and green fall across, opacity is whole in the ring and half within it. */
const [across, down] = [60, 40];
const pixel = (x: number, y: number): readonly [number, number, number, number] => {
  const r = Math.hypot((x - 29.5) / 29, (y - 19.5) / 19);
  return [x * 4, y * 6, 200, r > 1 ? 0 : r > 0.7 ? 255 : 128];
};
/** Rows by the standard's filter “Up” from the second on, so that a reader must undo it. */
function ringRows(depth: 8 | 16): Uint8Array {
  const line = (y: number): number[] =>
    Array.from({ length: across }, (_, x) => pixel(x, y).flatMap((value) => (depth === 8 ? [value] : [value, 77]))).flat(); // prettier-ignore
  return Uint8Array.from(
    Array.from({ length: down }, (_, y) => {
      const above = y === 0 ? null : line(y - 1);
      return [y === 0 ? 0 : 2, ...line(y).map((value, i) => (value - (above?.[i] ?? 0) + 256) % 256)];
    }).flat(),
  );
}
const ring = pngOf({ width: across, height: down, type: 6, rows: ringRows(8) });

/** What poppler's pdfimages takes out of a PDF: the lines of its list, and each image as PPM, grey ones too. */
const images = (bytes: Uint8Array): Promise<{ list: string; files: readonly Buffer[] }> =>
  inFolder((folder) => {
    const file = join(folder, 'signed.pdf');
    writeFileSync(file, bytes);
    const list = execFileSync('pdfimages', ['-list', file], { encoding: 'utf8' });
    execFileSync('pdfimages', [file, join(folder, 'image')]);
    const count = list.trim().split('\n').length - 2;
    const read = (n: number): Buffer => readFileSync(join(folder, `image-${String(n).padStart(3, '0')}.ppm`));
    return Promise.resolve({ list, files: Array.from({ length: count }, (_, n) => read(n)) });
  });
const pixelsOf = (ppm: Buffer): Buffer => ppm.subarray(ppm.length - across * down * 3);
const signed = (seal: Uint8Array) => signNote(plain, { identity, role: 'author', at, seal });

describe('a signature with the image of a seal', () => {
  it('holds every pixel and its opacity, as poppler’s pdfimages reads them back', async () => {
    for (const seal of [ring, pngOf({ width: across, height: down, type: 6, depth: 16, rows: ringRows(16) })]) {
      const { list, files } = await images(await signed(seal));
      expect(list).toMatch(/image +60 +40 +rgb +3 +8[^\n]*\n[^\n]*smask +60 +40 +gray +1 +8/);
      const wanted = Array.from({ length: across * down }, (_, i) => pixel(i % across, Math.floor(i / across)));
      expect([...pixelsOf(files[0]!)]).toEqual(wanted.flatMap(([r, g, b]) => [r, g, b]));
      expect([...pixelsOf(files[1]!)]).toEqual(wanted.flatMap(([, , , alpha]) => [alpha, alpha, alpha]));
    }
  });
  it('takes grey and palette of any depth as they are', async () => {
    const grey = pngOf({
      width: 4,
      height: 2,
      type: 0,
      rows: Uint8Array.from([0, 0, 50, 100, 150, 1, 200, 10, 10, 10]),
    });
    expect([...(await images(await signed(grey))).files[0]!.subarray(-24)]).toEqual([0, 50, 100, 150, 200, 210, 220, 230].flatMap((v) => [v, v, v])); // prettier-ignore
    const PLTE = chunk('PLTE', Uint8Array.from([255, 0, 0, 0, 0, 255, 9, 8, 7]));
    const four = pngOf({ width: 4, height: 1, type: 3, depth: 2, rows: Uint8Array.from([0, 0b01_00_10_01]), more: [PLTE] }); // prettier-ignore
    expect([...(await images(await signed(four))).files[0]!.subarray(-12)]).toEqual([0, 0, 255, 255, 0, 0, 9, 8, 7, 0, 0, 255]); // prettier-ignore
  });
  it('takes a JPEG’s pixels as they are, and nothing that a camera wrote beside them', async () => {
    const jpeg = await photograph();
    const place = Buffer.from('\xff\xfe\x00\x12taken at a place', 'latin1');
    const told = Buffer.concat([jpeg.subarray(0, 2), place, jpeg.subarray(2)]);
    const bytes = await signed(told);
    expect(Buffer.from(bytes).includes('taken at a place')).toBe(false);
    await inFolder((folder) => {
      const pdf = join(folder, 'signed.pdf');
      writeFileSync(pdf, bytes);
      execFileSync('pdfimages', ['-all', pdf, join(folder, 'image')]);
      const out = readFileSync(join(folder, 'image-000.jpg'));
      // From the first table of quantities on, every byte is the file's own.
      const table = Buffer.from([0xff, 0xdb]);
      expect(out.subarray(out.indexOf(table)).equals(jpeg.subarray(jpeg.indexOf(table)))).toBe(true);
      return Promise.resolve();
    });
  });
  it('stands for poppler’s pdfsig, has no fault for qpdf, keeps what was there, and says what a seal is not', async () => {
    const once = await signed(ring);
    const twice = await signNote(once, { identity, role: 'licensed engineer', at, seal: await photograph() });
    expect(twice.subarray(0, once.length)).toEqual(once);
    expect(once.subarray(0, plain.length)).toEqual(plain);
    expect((await readSignatures(twice)).map(({ role, faults }) => [role, faults])).toEqual([['author', []], ['licensed engineer', []]]); // prettier-ignore
    await expect(signNote(once, { identity, role: 'author', at, seal: ring })).rejects.toThrow(
      /author had signed before/,
    );
    const { check, objects } = readPdf(twice);
    expect(check).toContain('No syntax or stream encoding errors found');
    expect(check).not.toMatch(/warning/i);
    expect(JSON.stringify(objects)).toContain('not by itself a professional seal under local law');
    await inFolder((folder) => {
      const file = join(folder, 'signed.pdf');
      writeFileSync(file, twice);
      const said = execFileSync('pdfsig', ['-nocert', file], { encoding: 'utf8' });
      expect(said.match(/Signature Validation: Signature is Valid/g)).toHaveLength(2);
      return Promise.resolve();
    });
  });
  it('keeps within the signature’s rectangle, its sides in their ratio, however long they are', async () => {
    for (const [width, height] of [
      [60, 40],
      [400, 20],
      [10, 300],
    ] as const) {
      const rows = Uint8Array.from(Array.from({ length: height }, () => [0, ...Array<number[]>(width).fill([255, 0, 0]).flat()]).flat()); // prettier-ignore
      const bytes = await signed(pngOf({ width, height, type: 2, rows }));
      const rect = /\/Subtype \/Widget[^]*?\/Rect \[([\d. ]+)\]/.exec(Buffer.from(bytes).toString('latin1'))![1]!.split(' ').map(Number); // prettier-ignore
      const red = await redOf(bytes);
      const [x0, y0, x1, y1] = rect as [number, number, number, number];
      expect(red.left).toBeGreaterThan(x0 - 0.3);
      expect(red.right).toBeLessThan(x0 + (x1 - x0) / 3 + 0.3);
      expect(red.top).toBeGreaterThan(a4 - y1 - 0.3);
      expect(red.bottom).toBeLessThan(a4 - y0 + 0.3);
      const [across, up] = [red.right - red.left, red.bottom - red.top];
      // A dot of the picture is a quarter of a point; each edge may be off by one.
      expect(Math.abs(across - (up * width) / height)).toBeLessThan(0.5 * (1 + width / height));
      expect(Math.max(across / ((x1 - x0) / 3), up / (y1 - y0))).toBeGreaterThan(0.9);
    }
  });
  it('is left as it was without one', async () => {
    const bytes = await signNote(plain, { identity, role: 'author', at });
    const added = Buffer.from(bytes.subarray(plain.length)).toString('latin1');
    expect(added).toContain('/Resources <<\n>>');
    expect(added).not.toMatch(/\/Image|\/Seal|professional seal/);
    expect((await images(bytes)).files).toEqual([]);
  });
});

describe('an image that is no seal', () => {
  // Exif in an APP1 segment: one entry, orientation 6, big end first.
  const exif = Buffer.concat([Buffer.from('Exif\0\0MM\0*', 'latin1'), Buffer.from([0, 0, 0, 8, 0, 1, 1, 0x12, 0, 3, 0, 0, 0, 1, 0, 6, 0, 0])]); // prettier-ignore
  const lying = Buffer.concat([Buffer.from([0xff, 0xe1, 0, exif.length + 2]), exif]);
  const rows = ringRows(8);
  const good: PngParts = { width: across, height: down, type: 6, rows };
  const broken = Buffer.from(ring);
  broken[60]! ^= 1;
  const noFilter = rows.slice();
  noFilter[5 * (1 + across * 4)] = 9;
  it.each([
    ['neither kind', Buffer.from('<svg onload="x()"/>'), /neither a PNG nor a JPEG/],
    ['nothing', Buffer.alloc(0), /neither/],
    ['too long', Buffer.concat([ring, Buffer.alloc(2_000_000)]), /bytes, the limit is 2000000/],
    ['too many pixels', pngOf({ ...good, width: 70_000, height: 70_000 }), /70000 × 70000 pixels, the limit/],
    ['no pixels', pngOf({ ...good, width: 0 }), /damaged: it has no pixels/],
    ['more than it says (a bomb)', pngOf({ ...good, rows: new Uint8Array(200_000_000) }), /cannot be unpacked/],
    ['less than it says', pngOf({ ...good, rows: rows.subarray(0, 500) }), /500 bytes of pixels and needs 9640/],
    ['a wrong checksum', broken, /a checksum does not fit/],
    ['cut off', ring.subarray(0, ring.length - 20), /ends too early/],
    ['an unknown filter', pngOf({ ...good, rows: noFilter }), /row 6 has no known filter/],
    ['a depth that is none', pngOf({ ...good, depth: 4 }), /no colour type 6 of 4 bits/],
    ['interlaced', pngOf({ ...good, interlace: 1 }), /is an interlaced PNG/],
    ['no palette', pngOf({ width: 2, height: 1, type: 3, rows: Uint8Array.from([0, 0, 1]) }), /has no palette/],
    ['one clear colour', pngOf({ width: 1, height: 1, type: 0, rows: Uint8Array.from([0, 0]), more: [chunk('tRNS', Uint8Array.from([0, 0]))] }), /without an alpha channel/], // prettier-ignore
    ['half a JPEG', Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 16, 1]), /segments do not follow/],
    ['a JPEG of four inks', jpegOf(frameOf({ channels: 4 })), /JPEG of 4 colours/],
    ['an arithmetic JPEG', jpegOf(frameOf({ marker: 0xc9 })), /JPEG of a rare kind/],
    ['a huge JPEG', jpegOf(frameOf({ side: 65_000 })), /65000 × 65000 pixels/],
    ['a JPEG without a size', jpegOf(), /does not say its size/],
    ['a JPEG on its side', jpegOf(lying, frameOf({})), /lies on its side/],
  ] as const)('is refused: %s', async (_, bytes, why) => {
    await expect(sealImage(new Uint8Array(bytes))).rejects.toMatchObject({
      what: expect.stringMatching(why) as string,
      where: { field: 'seal' },
      mend: expect.stringMatching(/^(Save|Turn) .*Nothing was signed\.$/) as string,
    });
  });
  it('a second size and a text chunk do not reach the decoder', async () => {
    const other = Buffer.alloc(13);
    other.writeUInt32BE(0x7fffffff);
    const odd = pngOf({ ...good, more: [chunk('IHDR', other), chunk('tEXt', new Uint8Array(900_000))] });
    expect(await sealImage(odd)).toEqual(await sealImage(ring));
  });
});

it('sign --seal draws it, says what it is not, and writes nothing where it is refused', async () => {
  await inFolder(async (folder) => {
    for (const [name, bytes] of [
      ['note.pdf', plain],
      ['id.p12', p12],
      ['seal.png', ring],
      ['seal.svg', Buffer.from('<svg/>')],
    ] as const)
      // prettier-ignore
      writeFileSync(join(folder, name), bytes);
    const sign = (seal: string) => ran(['sign', 'note.pdf', '--certificate', 'id.p12', '--password-stdin', '--role', 'author', '--out', 'signed.pdf', '--at', at.toISOString(), '--seal', seal], folder, 'pw\n'); // prettier-ignore
    const refused = await sign('seal.svg');
    expect(refused.err).toMatch(/neither a PNG nor a JPEG[^]*Save the picture as PNG or JPEG/);
    expect(refused.code).not.toBe(0);
    expect((await sign('none.png')).err).toContain('There is no such file');
    expect(existsSync(join(folder, 'signed.pdf'))).toBe(false);
    const { code, out } = await sign('seal.png');
    expect(code).toBe(0);
    expect(out).toMatch(/signed by Test rsa as author[^]*not by itself a professional seal under local law/);
    expect((await images(readFileSync(join(folder, 'signed.pdf')))).list).toMatch(/60 +40 +rgb/);
  });
});

/** Height of the page in points. */
const a4 = 841.89;

/** A JPEG that poppler made: the note's page in small. */
const photograph = (): Promise<Buffer> =>
  inFolder((folder) => {
    writeFileSync(join(folder, 'note.pdf'), plain);
    execFileSync('pdftoppm', ['-r', '20', '-jpeg', '-singlefile', join(folder, 'note.pdf'), join(folder, 'page')]);
    return Promise.resolve(readFileSync(join(folder, 'page.jpg')));
  });

/** Where the drawn page is red, in points from its upper left corner. */
const redOf = (bytes: Uint8Array) =>
  inFolder((folder) => {
    writeFileSync(join(folder, 'signed.pdf'), bytes);
    execFileSync('pdftoppm', ['-r', '288', '-singlefile', join(folder, 'signed.pdf'), join(folder, 'page')]);
    const ppm = readFileSync(join(folder, 'page.ppm'));
    const [, wide = 0, high = 0] = /^P6\s+(\d+)\s+(\d+)\s+255\s/.exec(ppm.toString('latin1', 0, 40))!.map(Number);
    const from = ppm.length - 3 * wide * high;
    let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
    for (let i = 0; i < wide * high; i++) {
      if (ppm[from + 3 * i]! < 200 || ppm[from + 3 * i + 1]! > 60 || ppm[from + 3 * i + 2]! > 60) continue;
      const [x, y] = [i % wide, Math.floor(i / wide)];
      [left, right, top, bottom] = [
        Math.min(left, x),
        Math.max(right, x + 1),
        Math.min(top, y),
        Math.max(bottom, y + 1),
      ];
    }
    return Promise.resolve({ left: left / 4, right: right / 4, top: top / 4, bottom: bottom / 4 });
  });

/** A JPEG of these segments and no pixels. */
function jpegOf(...segments: readonly Buffer[]): Buffer {
  const scan = Buffer.from([0xff, 0xda, 0, 8, 1, 1, 0, 0, 63, 0, 0xff, 0xd9]);
  return Buffer.concat([Buffer.from([0xff, 0xd8]), ...segments, scan]);
}
function frameOf({ marker = 0xc0, channels = 3, side = 16 }): Buffer {
  const frame = Buffer.alloc(10 + 3 * channels);
  frame.set([0xff, marker, 0, 8 + 3 * channels, 8, side >> 8, side & 255, side >> 8, side & 255, channels]);
  return frame;
}
