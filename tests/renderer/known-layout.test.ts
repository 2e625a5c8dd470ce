import { expect, it } from 'vitest';
import { readingOf, readLayouts, withLayout, type KnownLayout } from '../../renderer/state/known-layout.ts';

it('how a layout was read is known for the next file like it, the last thirty of them', () => {
  let layouts: readonly KnownLayout[] = [];
  const keep = (of: KnownLayout['of'], layout: string, reading: KnownLayout['reading']) =>
    void (layouts = withLayout(layouts, { of, layout, reading }));
  keep('tank', 'a (m); b (N)', { travel: 2 });
  keep('tank', 'a (m); b (N)', { travel: 1 });
  expect(layouts).toHaveLength(1);
  expect(readingOf(layouts, 'tank', 'a (m); b (N)')).toEqual({ travel: 1 });
  expect(readingOf(layouts, 'sea', 'a (m); b (N)')).toBeUndefined();
  for (let i = 0; i < 30; i++) keep('sea', `layout ${i}`, { strokeGrows: 'towards' });
  expect(readingOf(layouts, 'tank', 'a (m); b (N)')).toBeUndefined();
  expect(readingOf(layouts, 'sea', 'layout 0')).toEqual({ strokeGrows: 'towards' });
});

it('what a store gives back is taken where it is understood', () => {
  const good = { of: 'sea', layout: 't (s)', reading: {} };
  expect(readLayouts([good, { of: 'other' }, 3, null])).toEqual([good]);
  expect(readLayouts('no list')).toEqual([]);
});
