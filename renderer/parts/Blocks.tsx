import type { Block, Cell, Section } from '../../core/note/note.ts';
import { FigureView } from './FigureView.tsx';
import { Formula } from './Formula.tsx';
import './blocks.css';

/** A section of the note, read in the window: the same text, formulas and figures that are printed. */
export function SectionView({ section, level = 3 }: { section: Section; level?: 2 | 3 }) {
  const Title = level === 2 ? 'h2' : 'h3';
  return (
    <section className="blocks">
      <Title>{section.title}</Title>
      {section.blocks.map((block, n) => (
        <BlockView key={n} block={block} />
      ))}
      {section.sections?.map((inner) => (
        <SectionView key={inner.title} section={inner} />
      ))}
    </section>
  );
}

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
                    <td key={i} className={block.columns[i]?.align === 'right' ? 'number' : undefined}>
                      <CellView cell={cell} />
                    </td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      );
    case 'equation':
      return (
        <div className="equation">
          <span className="meaning">{block.meaning}</span>
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
    case 'figure':
      return (
        <figure>
          <FigureView figure={block} width={560} />
          <figcaption>{block.caption}</figcaption>
        </figure>
      );
    case 'signOff':
      return null;
  }
}

const CellView = ({ cell }: { cell: Cell }) => (typeof cell === 'string' ? cell : <Formula boxes={[cell.box]} />);
