import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { RawDocument } from '../../core/document/read-document.ts';
import { startingDocument } from '../../core/document/starting-document.ts';
import { testsField, type TankTest } from '../../core/document/tests-field.ts';
import { createRecordService } from '../../core/engine/record-service.ts';
import type { Block, Section } from '../../core/note/note.ts';
import { textOfRecord } from '../../core/record/text-of-record.ts';

const bytesOf = (name: string) => new Uint8Array(readFileSync(`samples/tank-${name}.csv`));
const service = createRecordService();

/** A test of a sample's record, whose file was handed over. */
function opened(name: string, change: object = {}): TankTest {
  const bytes = bytesOf(name);
  const { hash } = service.open({ bytes });
  return testsField.parse({
    tank: [
      {
        id: name,
        title: name,
        record: { name: `tank-${name}.csv`, hash, bytes: bytes.length },
        setup: { mass: '1460 kg', volume: '0.186 m^3', area: '8.4 m^2', density: '1024 kg/m^3' },
        ...change,
      },
    ],
  }).tank[0]!;
}
const words = ({ blocks }: Section): string => JSON.stringify(blocks);
const kinds = ({ blocks }: Section): string[] => blocks.map(({ kind }: Block) => kind);

describe('records in their own thread', () => {
  it('are known by the SHA-256 of their bytes (node:crypto) and give their columns', () => {
    const bytes = bytesOf('open');
    const head = service.open({ bytes });
    expect(head.hash).toBe(createHash('sha256').update(bytes).digest('hex'));
    expect(head.columns).toEqual([
      { name: 'time', unit: 's' },
      { name: 'travel', unit: 'm' },
      { name: 'force', unit: 'N' },
    ]);
    expect(head.rows).toBe(bytes.reduce((count, byte) => count + Number(byte === 10), 0) - 1);
  });

  it('are shown before anything is fitted, with each row kept out', () => {
    const text = Buffer.from(bytesOf('closed')).toString().replace('\n0.2,', '\nbroken,');
    const bytes = new TextEncoder().encode(text);
    const { hash } = service.open({ bytes });
    const test = { ...opened('closed'), record: { name: 'x', hash, bytes: bytes.length } };
    const look = service.look({ test, units: 'metric' });
    expect(kinds(look).filter((kind) => kind === 'figure')).toHaveLength(4);
    expect(words(look)).toMatch(/1 row is kept out/);
    expect(words(look)).toMatch(/“broken” is no time/);
  });

  it('are reduced, compared with another test and laid beside theory', () => {
    const [closed, open] = [opened('closed'), opened('open')];
    const { section, accepted } = service.reduce({ test: closed, units: 'metric' });
    expect(words(section)).toMatch(/Newey and West/);
    expect((accepted['addedMass'] as { value: string }).value).toMatch(/^17\d\d\d(\.\d+)? kg$/);
    expect(words(service.compare({ test: closed, other: open, units: 'metric' }))).toMatch(/above 0.999/);
    const raw = startingDocument('metric') as unknown as RawDocument;
    // one run: theory is asked at its amplitude alone
    const short = opened('closed', { conditioning: { to: '75 s' } });
    expect(words(service.predict({ test: short, raw, option: null, units: 'metric' }))).toMatch(/Computed by the lattice/); // prettier-ignore
  });

  it('are refused by name where their file is not there', () => {
    const test = { ...opened('closed'), record: { name: 'lost.csv', hash: '0'.repeat(64), bytes: 1 } };
    expect(() => service.reduce({ test, units: 'metric' })).toThrow(/“lost.csv” is not open/);
  });
});

describe('text of a record', () => {
  it('is UTF-8, UTF-16 by its mark, or Windows-1252 where it is no UTF-8', () => {
    expect(textOfRecord(new TextEncoder().encode('t,°'))).toBe('t,°');
    expect(textOfRecord(Uint8Array.of(0xff, 0xfe, 0x74, 0, 0xb0, 0)).replace('\uFEFF', '')).toBe('t°');
    expect(textOfRecord(Uint8Array.of(0x74, 0x2c, 0xb0))).toBe('t,°');
    expect(() => textOfRecord(Uint8Array.of(0x50, 0x4b, 0, 3))).toThrow(/no text/);
  });
});

describe('the delay of the force', () => {
  it('is told way by way: by the fit where amplitudes and periods differ, with the reason where it cannot be', () => {
    const { ways, section } = service.delay({ test: opened('flawed'), units: 'metric' });
    expect(ways).toHaveLength(1);
    const [fit] = ways;
    if (!fit || 'refusal' in fit) throw new Error(words(section));
    // the record was made with 40 ms
    expect(Math.abs(fit.late - 0.04)).toBeLessThan(fit.bound);
    const short = opened('closed', { conditioning: { to: '75 s' }, delay: { eventFrom: '20 s', eventTo: '40 s' } });
    const [event, one] = service.delay({ test: short, units: 'metric' }).ways;
    expect('refusal' in one! && one.refusal.what).toMatch(/cannot tell drag and delay apart/);
    expect(event!.way).toBe('event');
  });

  it('does not change what a result is of: only taking it back does', () => {
    const [plain, asked] = [opened('closed'), opened('closed', { delay: { eventFrom: '20 s', eventTo: '40 s' } })];
    const key = (test: TankTest) => service.reduce({ test, units: 'metric' }).accepted['key'];
    expect(key(asked)).toBe(key(plain));
    expect(key(opened('closed', { conditioning: { forceLate: '10 ms' } }))).not.toBe(key(plain));
  });
});
