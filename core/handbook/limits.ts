import { checks } from '../checks/index.ts';
import { leftToTheEngineer } from '../note/deferred-section.ts';
import type { Section } from '../note/note.ts';
import { limitsOfValidation } from '../selfcheck/limits-of-validation.ts';
import { limitWords as w } from './texts/limits.ts';

/** Where the program ends: in words, and as note, verification report and checks say it themselves. */
export function limits(): readonly Section[] {
  const listed = ({ title, items }: { title: string; items: readonly string[] }): Section => ({
    title,
    blocks: [{ kind: 'list', items }],
  });
  const outside = checks.flatMap(({ title, range = [] }) => range.map(({ otherwise }) => [title, otherwise]));
  return [
    { title: w.approval.title, blocks: [{ kind: 'paragraph', tone: 'caution', text: w.approval.text }] },
    ...[w.loads, w.strength, w.water].map(listed),
    listed({ title: w.left, items: leftToTheEngineer }),
    listed({ title: w.validation, items: limitsOfValidation() }),
    {
      title: w.ranges.title,
      blocks: [
        {
          kind: 'table',
          caption: w.ranges.caption,
          columns: [
            { title: w.ranges.check, width: 0.35 },
            { title: w.ranges.outside, width: 0.65 },
          ],
          rows: outside,
        },
      ],
    },
  ];
}
