import type { RowView } from '../../core/engine/result-view.ts';
import { texts } from '../texts.ts';
import { useWorkbench } from '../state/workbench.ts';
import { SectionView } from './Blocks.tsx';
import { useExplained } from './use-explained.ts';
import './CheckLine.css';

/** A check on one line with its utilisation; opened, it shows formula, numbers, source and cautions, and lights its place. */
export function CheckLine({ row }: { row: RowView }) {
  const open = useWorkbench(
    ({ openCheck }) =>
      openCheck?.check === row.id && openCheck.place === row.place && openCheck.situation === row.situation,
  );
  const toggle = () =>
    useWorkbench.setState({
      openCheck: open ? null : { check: row.id, place: row.place, situation: row.situation },
      selection: row.place,
    });
  const tone =
    row.verdict === 'fails' ? 'fails' : row.verdict === 'cannot be judged' ? 'unjudged' : row.near ? 'near' : '';
  return (
    <li className={`check-line ${tone}`}>
      <button type="button" className="plain" aria-expanded={open} onClick={toggle}>
        <span className="name">
          {row.title}
          <span className="where">
            {row.placeWords}
            {row.situation ? `, ${row.situation}` : ''}
          </span>
        </span>
        <UseBar utilisation={row.utilisation} />
        <span className="use">{row.utilisation === null ? '–' : row.utilisation.toFixed(2)}</span>
        <span className="verdict">{texts.verdict[row.verdict]}</span>
      </button>
      {row.reason && <p className="reason">{row.reason}</p>}
      {open && <Explained row={row} />}
    </li>
  );
}

function Explained({ row }: { row: RowView }) {
  const section = useExplained({ check: row.id, place: row.place, situation: row.situation });
  return <div className="explained">{section ? <SectionView section={section} /> : <p className="quiet">…</p>}</div>;
}

/** Utilisation as a bar; the mark is at one. */
function UseBar({ utilisation }: { utilisation: number | null }) {
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
