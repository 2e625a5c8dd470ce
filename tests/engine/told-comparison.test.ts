import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { createEngine } from '../../core/engine/engine.ts';
import type { ComparisonView } from '../../core/engine/comparison-view.ts';
import type { EngineNews } from '../../core/engine/messages.ts';
import { heardComparison } from '../../core/engine/told-comparison.ts';

const text = readFileSync(new URL('../../samples/small.stillplate.json', import.meta.url), 'utf8');
const ids = (JSON.parse(text) as { options: { id: string }[] }).options.map(({ id }) => id);

/** An engine with the document open, its comparisons heard as the window hears them. */
function opened() {
  const told: Extract<EngineNews, { kind: 'comparison' }>[] = [];
  const waiting: (() => void)[] = [];
  const engine = createEngine({
    tell: (news) => {
      if (news.kind === 'comparison') told.push(structuredClone(news));
    },
    later: (goOn) => waiting.push(goOn),
  });
  const rest = (): void => {
    while (waiting.length > 0) waiting.shift()!();
  };
  let heard: ComparisonView | null = null;
  const hear = (): ComparisonView => {
    rest();
    for (const { view } of told.splice(0)) heard = heardComparison(view, heard);
    return heard!;
  };
  engine.open({ text, journal: [] });
  return { engine, rest, hear, told };
}

it('tells only the options that an edit changes, and the whole that is heard is that of an engine opened anew', () => {
  const { engine, rest, hear, told } = opened();
  const before = hear();
  const [id] = ids;
  engine.edit({ edit: { kind: 'describeOption', id: id!, title: 'Renamed', remark: null } });
  rest();
  const sent = told.at(-1)!.view.options;
  expect(sent.filter((option) => !('isSame' in option)).map((option) => option.id)).toEqual([id]);
  const after = hear();
  // the very objects of before, so that their cards are not drawn again
  expect(after.options.map((option, i) => option === before.options[i])).toEqual(after.options.map((option) => option.id !== id)); // prettier-ignore
  const fresh = opened();
  fresh.engine.open({ text: engine.text(null).text, journal: [] });
  expect(after).toEqual(fresh.hear());
});

it('hands back the very comparison of before when nothing in it changed, and all of it after another document', () => {
  const { engine, rest, hear, told } = opened();
  const before = hear();
  engine.edit({ edit: { kind: 'setField', option: null, path: ['project', 'subject'], value: 'Another subject' } });
  expect(hear()).toBe(before);
  engine.open({ text, journal: [] });
  rest();
  expect(told.at(-1)!.view.options.some((option) => 'isSame' in option)).toBe(false);
});
