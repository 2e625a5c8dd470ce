import { againstRows, turnWords } from '../options/bolted-against-welded-rows.ts';
import type { BoltedAgainstWelded } from '../options/bolted-against-welded.ts';
import type { Print } from '../print-in.ts';
import { significant } from '../quantity/format-quantity.ts';
import type { Block, Section } from './note.ts';

/** Bolted against welded on one page, all else equal: line by line with where each comes from, the money, and what would turn it round. */
export function againstSection(against: BoltedAgainstWelded, print: Print): Section {
  const { said, rates } = against;
  const turns = turnWords(against, print);
  return {
    title: 'Bolted against welded',
    startsPage: true,
    blocks: [
      { kind: 'list', items: [...said, 'All else is as the option has it; both are appraised in full.'] },
      {
        kind: 'table',
        caption: 'The same plate, its panels bolted and welded',
        columns: [
          { title: '', width: 0.18 },
          { title: 'Bolted', width: 0.31 },
          { title: 'Welded', width: 0.31 },
          { title: 'From', width: 0.2 },
        ],
        rows: againstRows(against, print).map(({ title, bolted, welded, source }) => [title, bolted, welded, source]),
      },
      ...(rates ? [money(against)] : []),
      ...(turns.length > 0
        ? [
            { kind: 'paragraph', text: 'What would turn the decision round, each by itself:', keep: true } as const,
            { kind: 'list', items: turns } as const,
          ]
        : []),
      {
        kind: 'paragraph',
        tone: 'caution',
        text: 'The page decides nothing: whoever signs weighs it, and the rules of yard and class on hot work and bolting come first.',
      },
    ],
  };
}

function money({ bolted, welded, rates }: BoltedAgainstWelded): Block {
  const titles = [...new Set([...bolted.cost.lines, ...welded.cost.lines].map(({ title }) => title))];
  const of = (side: typeof bolted, title: string) => {
    const line = side.cost.lines.find((each) => each.title === title);
    if (!line) return '–';
    return line.money === null ? `rate not given: ${line.missing.join(', ')}` : significant(line.money, 4);
  };
  return {
    kind: 'table',
    caption: `Money in ${rates!.currency}; rates stated by the user (${rates!.source})`,
    columns: [
      { title: 'Line', width: 0.4 },
      { title: 'Bolted', width: 0.3, align: 'right' },
      { title: 'Welded', width: 0.3, align: 'right' },
    ],
    rows: titles.map((title) => [title, of(bolted, title), of(welded, title)]),
  };
}
