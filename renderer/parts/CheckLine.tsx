import { memo, useEffect, useRef } from 'react';
import type { RowView } from '../../core/engine/result-view.ts';
import { texts } from '../texts.ts';
import { openHandbook } from '../state/handbook-place.ts';
import { useWorkbench } from '../state/workbench.ts';
import { BothSides, ChooseSide } from './BothSides.tsx';
import { SectionView } from './Blocks.tsx';
import { useExplained } from './use-explained.ts';
import './CheckLine.css';

/**
 * A check on one line with its utilisation; opened, it shows formula, numbers, source and cautions, and lights its
 * place. `placeFirst`: under the check's own title, where only the place tells lines apart.
 */
export const CheckLine = memo(function CheckLine({ row, placeFirst = false }: { row: RowView; placeFirst?: boolean }) {
  const open = useWorkbench(
    ({ openCheck }) =>
      openCheck?.check === row.id && openCheck.place === row.place && openCheck.situation === row.situation,
  );
  const frame = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (open) frame.current?.scrollIntoView({ block: 'nearest' });
  }, [open]);
  const toggle = () =>
    useWorkbench.setState({
      openCheck: open ? null : { check: row.id, place: row.place, situation: row.situation },
      selection: row.place,
    });
  const tone =
    row.verdict === 'fails' ? 'fails' : row.verdict === 'cannot be judged' ? 'unjudged' : row.near ? 'near' : '';
  const where = [row.placeWords, row.situationWords].filter(Boolean).join(', ');
  return (
    <li ref={frame} className={`check-line ${tone}`}>
      <button type="button" className="plain" aria-expanded={open} onClick={toggle}>
        <span className="name">
          {placeFirst ? where : row.title}
          {!placeFirst && <span className="where">{where}</span>}
        </span>
        <UseBar utilisation={row.utilisation} />
        <span className="use">{row.utilisation === null ? '–' : row.utilisation.toFixed(2)}</span>
        <span className="verdict">{texts.verdict[row.verdict]}</span>
      </button>
      {row.reason && <p className="reason">{row.reason}</p>}
      {row.both && <BothSides both={row.both} />}
      {open && row.both && <ChooseSide row={row} both={row.both} />}
      {open && <Explained row={row} />}
    </li>
  );
});

function Explained({ row }: { row: RowView }) {
  const section = useExplained({ check: row.id, place: row.place, situation: row.situation });
  const frame = useRef<HTMLDivElement>(null);
  const isThere = section !== null;
  // What was worked out makes the line longer: as much of it as there is room for is brought into sight.
  useEffect(() => {
    if (isThere) frame.current?.closest('li')?.scrollIntoView({ block: 'nearest' });
  }, [isThere]);
  return (
    <div className="explained" ref={frame}>
      <button type="button" className="link small" onClick={() => openHandbook('theory', row.id)}>
        {texts.strength.theory}
      </button>
      {section ? <SectionView section={section} /> : <p className="quiet">{texts.strength.working}</p>}
    </div>
  );
}

/** Utilisation as a bar; the mark is at one. */
export function UseBar({ utilisation }: { utilisation: number | null }) {
  const part = Math.min(utilisation ?? 0, 1.5) / 1.5;
  return (
    <svg className="use-bar" viewBox="0 0 60 8" aria-hidden="true">
      <rect x="0" y="2" width="60" height="4" className="trough" />
      <rect
        x="0"
        y="2"
        width={60 * part}
        height="4"
        className={utilisation !== null && utilisation > 1 ? 'over' : 'level'}
      />
      <line x1="40" x2="40" y1="0" y2="8" className="limit" />
    </svg>
  );
}
