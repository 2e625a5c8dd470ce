import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { appraise } from '../../core/appraise.ts';
import { readDocument, readDocumentText } from '../../core/document/read-document.ts';
import { cellOf, withCell } from '../../renderer/parts/row-cells.ts';
import {
  newAcoustic,
  newCanister,
  newLift,
  newMainFloat,
  newRecovery,
  newRelease,
  newWay,
} from '../../renderer/sheets/recovery/recovery-starts.ts';

type Part = Record<string, unknown>;

describe('what the sheet of recovery adds', () => {
  it.each(['small', 'inch'])(
    'is read and judged in the units of the sample “%s”, with nothing for the reader to mend',
    (sample) => {
      const raw = readDocumentText(readFileSync(`samples/${sample}.stillplate.json`, 'utf8')) as Part;
      const inch = raw['units'] === 'inch';
      const start = newRecovery(inch) as Part;
      const recovery = {
        ...start,
        releases: [
          ...(start['releases'] as Part[]),
          { ...(newRelease('R2', inch) as Part), canister: newCanister(inch) },
        ],
        ways: [...(start['ways'] as Part[]), newWay('way 1')],
        acoustic: newAcoustic(inch),
        mainFloat: newMainFloat(inch),
        lift: newLift(inch),
      };
      for (const part of [start, recovery]) {
        const document = { ...raw, recovery: part } as never;
        const { rows } = appraise(document, readDocument(document), null);
        const made = rows.filter(({ id, verdict }) => id.startsWith('recovery-') && verdict !== 'not applicable');
        expect(made.length).toBeGreaterThan(4);
        expect(made.filter(({ demand }) => Number.isNaN(demand))).toEqual([]);
      }
    },
  );
});

describe('cells of a table that stand a part deeper', () => {
  const row = { name: 'rope', fails: { value: 0.02, source: 'own records' } };

  it('are read and set there, and leave what is beside them', () => {
    expect(cellOf(row, 'fails.value')).toBe(0.02);
    expect(cellOf({ name: 'rope' }, 'fails.value')).toBeUndefined();
    expect(withCell(row, 'fails.value', 0.03)).toEqual({ name: 'rope', fails: { value: 0.03, source: 'own records' } });
    expect(withCell({ name: 'rope' }, 'fails.value', 0.03)).toEqual({ name: 'rope', fails: { value: 0.03 } });
  });

  it('take their part out with the last of them', () => {
    const half = withCell(row, 'fails.value', '');
    expect(half).toEqual({ name: 'rope', fails: { value: '', source: 'own records' } });
    expect(withCell(half, 'fails.source', '')).toEqual({ name: 'rope' });
  });
});
