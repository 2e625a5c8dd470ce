import { expect, it } from 'vitest';
import { readDocument } from '../../core/document/read-document.ts';
import { startingDocument } from '../../core/document/starting-document.ts';
import { oppositeFixing } from '../../core/options/opposite-fixing.ts';

/** What is derived for the bolted design of the document that `new` writes, when both its designs are fixed in one way. */
function opposite(units: 'metric' | 'inch', fixing: object | 'bolted') {
  const raw = startingDocument(units);
  const { bolted, welded } = raw.designs;
  const one = fixing === 'bolted' ? bolted.fixing : fixing;
  const read = readDocument({
    ...raw,
    designs: { bolted: { ...bolted, fixing: one }, welded: { ...welded, fixing: one } },
  });
  return oppositeFixing(read, read.designs['bolted']!);
}

// By hand: M12 has a normal hole of 13 mm (EN 1090-2 Table 11), 1/2 in one of 9/16 in (AISC 360-22 Table J3.3), both from memory.
it('is set out in the document’s units: whole steps of a workshop, not under what is asked', () => {
  const weld = (throat: string) => ({ kind: 'welded', throat, pattern: 'all round' });
  expect(opposite('metric', weld('3 mm')).fixing).toMatchObject({ bolt: 'M12', pitch: '104 mm', edgeDistance: '19.5 mm' }); // prettier-ignore
  // 8 · 9/16 = 4.5; 1.5 · 9/16 = 0.84375, up to 14/16.
  expect(opposite('inch', weld('1/8 in')).fixing).toMatchObject({ bolt: '1/2 in', pitch: '4.5 in', edgeDistance: '0.875 in' }); // prettier-ignore
  for (const units of ['metric', 'inch'] as const) {
    const { fixing, said } = opposite(units, 'bolted');
    expect(fixing['throat']).toMatch(units === 'inch' ? /^[\d.]+ in$/ : /^[\d.]+ mm$/);
    expect(said.join()).toContain(fixing['throat']);
  }
});
