import { significant } from '../quantity/format-quantity.ts';
import type { DelayWay, FoundDelay } from '../tank/delay-ways.ts';
import type { Section } from './note.ts';

export const delayWayWords: Readonly<Record<DelayWay, string>> = {
  event: 'the sync event',
  air: 'the run in air',
  fit: 'the test’s own amplitudes and periods',
};

/** How late the force is read, way by way. */
export function delaySection(ways: readonly FoundDelay[]): Section {
  return {
    title: 'Delay of the force',
    blocks: [
      {
        kind: 'table',
        caption: 'How late the force is read after the travel, as the record came, with what each way leaves open',
        columns: [
          { title: 'From', width: 0.28 },
          { title: 'Late', width: 0.16, align: 'right' },
          { title: 'Within', width: 0.16, align: 'right' },
          { title: 'Beside', width: 0.4 },
        ],
        rows: ways.map((one) =>
          'refusal' in one
            ? [delayWayWords[one.way], '', '', `${one.refusal.what}. ${one.refusal.mend}`]
            : [delayWayWords[one.way], ms(one.late), `± ${ms(one.bound)}`, one.beside],
        ),
      },
    ],
  };
}

const ms = (seconds: number): string => `${significant(1000 * seconds, 3)} ms`;
