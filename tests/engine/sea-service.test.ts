import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { testsField } from '../../core/document/tests-field.ts';
import type { SeaDeployment } from '../../core/document/sea-tests-field.ts';
import { createRecordService } from '../../core/engine/record-service.ts';
import type { Section } from '../../core/note/note.ts';

const service = createRecordService();
const words = ({ blocks }: Section): string => JSON.stringify(blocks);

/** A sample's deployment, whose files were handed over. */
function opened(name: 'open' | 'closed', change: object = {}): SeaDeployment {
  const record = (file: string) => {
    const bytes = new Uint8Array(readFileSync(`samples/${file}`));
    return { name: file, hash: service.open({ bytes }).hash, bytes: bytes.length };
  };
  return testsField.parse({
    sea: [
      {
        id: name,
        title: name,
        record: record(`sea-${name}.csv`),
        second: { record: record(`sea-${name}-plate.csv`) },
        setup: { ...{ highPass: '25 s', accelerationNoise: '0.01 m/s^2', strokeNoise: '4 mm', pressureNoise: '120 Pa' }, ...{ clock: '20 ms', density: '1027 kg/m^3', plateDepth: '34 m', waterDepth: '62 m', limit: '0.5 m' }, ...change }, // prettier-ignore
      },
    ],
  }).sea[0]!;
}

describe('deployments in a thread of their own', () => {
  it('are shown file by file, reduced, kept by what they depend on, and compared at like seas', () => {
    const closed = opened('closed');
    const looks = service.lookSea({ deployment: closed, units: 'metric' });
    expect(looks.map(({ title }) => title)).toEqual(['First look: sea-closed.csv', 'First look: sea-closed-plate.csv']);
    const { section, accepted } = service.reduceSea({ deployment: closed, units: 'metric' });
    expect(section.blocks.filter(({ kind }) => kind === 'figure')).toHaveLength(4);
    expect(words(section)).toMatch(/plate laid on float less stroke, alike by 0\.\d+/);
    // what is kept passes the document's own schema, and changes with a setting
    expect(testsField.parse({ sea: [{ ...closed, result: accepted }] }).sea[0]!.result!.held).toHaveLength(4);
    const other = service.reduceSea({ deployment: opened('closed', { clock: '5 ms' }), units: 'metric' });
    expect(other.accepted['key']).not.toBe(accepted['key']);
    expect(words(service.compareSea({ deployment: closed, other: opened('open'), units: 'metric' }))).toMatch(/below 0.001/); // prettier-ignore
  });

  it('keep a picture in which the spectrum’s area is the motion (Parseval), and no peak is lost', () => {
    const { accepted } = service.reduceSea({ deployment: opened('closed'), units: 'metric' });
    const { spectra, whole, significant, largest } = testsField.parse({ sea: [{ ...opened('closed'), result: accepted }] }).sea[0]!.result!; // prettier-ignore
    const step = spectra.at[1]! - spectra.at[0]!;
    const area = spectra.plate.reduce((sum, S) => sum + S, 0) * step;
    expect((4 * Math.sqrt(area)) / significant.value.si).toBeCloseTo(1, 1);
    expect(Math.max(...whole.plate) - Math.min(...whole.plate)).toBeGreaterThanOrEqual(0.999 * largest.si);
  });
});
