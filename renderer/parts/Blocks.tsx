import { boxText } from '../../core/derive/box-text.ts';
import type { Block, Cell, EquationBlock, Figure, Section } from '../../core/note/note.ts';
import { useRef } from 'react';
import { texts } from '../texts.ts';
import { CopyButton } from './CopyButton.tsx';
import { figureItem } from './figure-item.ts';
import { FigureView } from './FigureView.tsx';
import { Folding } from './Folding.tsx';
import { Formula } from './Formula.tsx';
import { formulaItem } from './formula-item.ts';
import { tableItem } from './table-item.ts';
import './blocks.css';

/** A section of the note, read in the window: the same text, formulas and figures that are printed. */
export function SectionView({
  section,
  level = 3,
  folds = level === 2,
}: {
  section: Section;
  level?: 2 | 3;
  folds?: boolean;
}) {
  const { title } = section;
  const inside = (
    <>
      <BlockList blocks={section.blocks} />
      {section.sections?.map((inner) => (
        <SectionView key={inner.title} section={inner} folds={folds} />
      ))}
    </>
  );
  if (folds)
    return (
      <Folding title={title} level={level} className="blocks">
        {inside}
      </Folding>
    );
  const Title = level === 2 ? 'h2' : 'h3';
  return (
    <section className="blocks">
      <Title>{title}</Title>
      {inside}
    </section>
  );
}

export const BlockList = ({ blocks }: { blocks: readonly Block[] }) =>
  blocks.map((block, n) => <BlockView key={n} block={block} />);

function BlockView({ block }: { block: Block }) {
  switch (block.kind) {
    case 'paragraph':
      return <p className={`tone-${block.tone ?? 'plain'}`}>{block.text}</p>;
    case 'list':
      return (
        <ul className={`tone-${block.tone ?? 'plain'}`}>
          {block.items.map((item) => (
            <li key={item}>{item}</li>
          ))}
        </ul>
      );
    case 'table':
      return (
        <div className="table-frame" tabIndex={0} role="region" aria-label={block.caption}>
          <table>
            <caption>{block.caption}</caption>
            <thead>
              <tr>
                {block.columns.map(({ title, align }, n) => (
                  <th key={n} scope="col" className={align === 'right' ? 'number' : undefined}>
                    {title}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {block.rows.map((row, n) => (
                <tr key={n} className={block.loud?.includes(n) ? 'loud' : undefined}>
                  {row.map((cell, i) => (
                    <td key={i} className={cellClass(block.columns[i], cell)}>
                      <CellView cell={cell} />
                    </td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
          <CopyButton
            label={texts.table.copy}
            what={() =>
              tableItem([block.columns.map(({ title }) => title), ...block.rows.map((row) => row.map(cellText))])
            }
          />
        </div>
      );
    case 'equation':
      return <Equation block={block} />;
    case 'figure':
      return <FigureBlock figure={block} />;
    case 'signOff':
      return null;
  }
}

function Equation({ block }: { block: EquationBlock }) {
  const frame = useRef<HTMLDivElement>(null);
  return (
    <div className="equation" ref={frame}>
      <span className="meaning">
        {block.meaning}{' '}
        <CopyButton
          label={texts.copy.formula}
          what={() => formulaItem(block.plain, frame.current!.querySelector('math')!)}
        />
      </span>
      <Formula
        label={block.plain}
        boxes={[
          block.left,
          ...(block.formula ? ['=', block.formula] : []),
          ...(block.substituted ? ['=', block.substituted] : []),
          '=',
          block.result,
        ]}
      />
    </div>
  );
}

function FigureBlock({ figure }: { figure: Figure }) {
  const frame = useRef<HTMLElement>(null);
  return (
    <figure ref={frame}>
      <FigureView figure={figure} width={560} />
      <figcaption>
        {figure.caption}{' '}
        <CopyButton label={texts.copy.figure} what={() => figureItem(frame.current!.querySelector('svg')!)} />
      </figcaption>
    </figure>
  );
}

/** A number and its unit stay on one line; words in a column of numbers may break. */
const cellClass = (column: { readonly align?: 'left' | 'right' } | undefined, cell: Cell): string | undefined =>
  column?.align !== 'right' ? undefined : cellText(cell).length <= longestUnbroken ? 'number unbroken' : 'number';
const longestUnbroken = 20;

const cellText = (cell: Cell): string => (typeof cell === 'string' ? cell : boxText(cell.box));

const CellView = ({ cell }: { cell: Cell }) => (typeof cell === 'string' ? cell : <Formula boxes={[cell.box]} />);
