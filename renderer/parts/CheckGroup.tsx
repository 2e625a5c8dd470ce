import { memo, useEffect, useId, useState } from 'react';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import type { Group } from './check-groups.ts';
import { CheckLine, UseBar } from './CheckLine.tsx';
import './CheckLine.css';

/** So many lines of a check are shown at first; the rest on asking. */
const few = 8;

/** One check with its lines, place by place, folded until it is wanted. */
export const CheckGroup = memo(function CheckGroup({ group }: { group: Group }) {
  const { id, title, fails, unjudged, largest, rows } = group;
  const lines = useId();
  // Opening a check elsewhere opens its group here.
  const asked = useWorkbench(({ openCheck }) => (openCheck?.check === id ? openCheck.place : null));
  const [isOpen, setOpen] = useState(asked !== null);
  const [all, setAll] = useState(false);
  useEffect(() => {
    if (asked !== null) setOpen(true);
  }, [asked]);
  const t = texts.strength;
  const shown = all ? rows : rows.filter(({ place }, n) => n < few || place === asked);
  return (
    <section className={`check-group${fails > 0 ? ' fails' : unjudged > 0 ? ' unjudged' : ''}`}>
      <h4>
        <button
          type="button"
          className="plain"
          aria-expanded={isOpen}
          aria-controls={lines}
          onClick={() => setOpen(!isOpen)}
        >
          <span className="name">{title}</span>
          <UseBar utilisation={largest} />
          <span className="use">{largest === null ? '–' : largest.toFixed(2)}</span>
          <span className="verdict">
            {fails > 0
              ? texts.headline.fails(fails)
              : unjudged > 0
                ? texts.headline.unjudged(unjudged)
                : t.pass(rows.length)}
            {fails + unjudged > 0 && <span className="quiet"> {t.of(rows.length)}</span>}
          </span>
        </button>
      </h4>
      {isOpen && (
        <div id={lines} className="group-lines">
          <ul className="check-lines">
            {shown.map((row) => (
              <CheckLine key={`${row.place}|${row.direction}|${row.situation}`} row={row} placeFirst />
            ))}
          </ul>
          {shown.length < rows.length && (
            <button type="button" className="link small" onClick={() => setAll(true)}>
              {t.more(rows.length - shown.length)}
            </button>
          )}
        </div>
      )}
    </section>
  );
});
