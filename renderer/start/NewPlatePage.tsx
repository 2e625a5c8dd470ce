import { useEffect, useState } from 'react';
import type { PreviewView } from '../../core/engine/messages.ts';
import type { NewPlate } from '../../core/engine/new-plate.ts';
import { Refusal, type RefusalText } from '../../core/refusal.ts';
import { FieldFrame } from '../parts/FieldFrame.tsx';
import { FigureView } from '../parts/FigureView.tsx';
import { useSession } from '../state/session-context.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import './new-plate.css';

const first: Readonly<Record<'metric' | 'inch', NewPlate>> = {
  metric: {
    name: texts.newPlate.firstName,
    units: 'metric',
    length: '3.6 m',
    width: '2.4 m',
    mainTubes: 3,
    crossTubes: 5,
    section: 'SHS 120x120x6.3 hot',
    depth: '30 m',
    force: '12 kN',
  },
  inch: {
    name: texts.newPlate.firstName,
    units: 'inch',
    length: '144 in',
    width: '96 in',
    mainTubes: 3,
    crossTubes: 5,
    section: 'HSS 5x5x5/16',
    depth: '100 ft',
    force: '2700 lbf',
  },
};

/** Six questions, and the plate that grows as they are answered. */
export function NewPlatePage() {
  const session = useSession();
  const [asked, setAsked] = useState<NewPlate>(first.metric);
  const [made, setMade] = useState<{ readonly text: string; readonly preview: PreviewView } | null>(null);
  const [faults, setFaults] = useState<readonly RefusalText[]>([]);
  const t = texts.newPlate;
  useEffect(() => {
    let current = true;
    const ask = () =>
      session.engine.ask('newPlate', asked).then(
        (plate) => {
          if (!current) return;
          setMade(plate);
          setFaults(plate.preview.faults);
        },
        (error: unknown) => {
          if (!(error instanceof Refusal)) throw error;
          if (current) setFaults(error.all);
        },
      );
    // Each key asks for a whole plate: only where the typing pauses is it made.
    const pause = setTimeout(() => void ask(), 60);
    return () => {
      current = false;
      clearTimeout(pause);
    };
  }, [session, asked]);
  const make = async () => {
    try {
      // Of the answers as they stand now: what is drawn may be of a moment before.
      const { text } = await session.engine.ask('newPlate', asked);
      await session.openText(asked.name, text, null);
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      setFaults(error.all);
    }
  };
  const fault = (field: string) => faults.find(({ where }) => where?.['path'] === field) ?? null;
  const other = faults.filter(({ where }) => !Object.hasOwn(asked, String(where?.['path'])));
  const answer = (field: keyof NewPlate, value: string | number) => setAsked({ ...asked, [field]: value });
  const text = (field: 'name' | 'length' | 'width' | 'section' | 'depth' | 'force', help?: string) => (
    <FieldFrame label={t.labels[field]} help={help} fault={fault(field)}>
      {(frame) => (
        <input
          type="text"
          {...frame}
          list={field === 'section' ? 'new-sections' : undefined}
          value={asked[field]}
          onChange={({ target }) => answer(field, target.value)}
        />
      )}
    </FieldFrame>
  );
  const count = (field: 'mainTubes' | 'crossTubes') => (
    <FieldFrame label={t.labels[field]} help={t.counts[field]} fault={fault(field)}>
      {(frame) => (
        <input
          type="number"
          min={2}
          max={60}
          {...frame}
          value={Number.isNaN(asked[field]) ? '' : asked[field]}
          onChange={({ target }) => answer(field, target.valueAsNumber)}
        />
      )}
    </FieldFrame>
  );
  return (
    <main className="new-plate">
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void make();
        }}
      >
        <h1>{t.title}</h1>
        <p className="quiet">{t.lead}</p>
        <FieldFrame label={t.labels.units} help={t.unitsHelp}>
          {(frame) => (
            <select
              {...frame}
              value={asked.units}
              onChange={({ target }) => setAsked({ ...first[target.value as 'metric' | 'inch'], name: asked.name })}
            >
              <option value="metric">{t.units.metric}</option>
              <option value="inch">{t.units.inch}</option>
            </select>
          )}
        </FieldFrame>
        {text('name')}
        {text('length', t.outlineHelp)}
        {text('width', t.widthHelp)}
        {count('mainTubes')}
        {count('crossTubes')}
        {text('section', t.sectionHelp)}
        {text('depth', t.depthHelp)}
        {text('force', t.forceHelp)}
        <SectionList />
        {other.map(({ what, mend }) => (
          <p key={what} className="fault">
            {what}. {mend}
          </p>
        ))}
        <div className="acts">
          <button type="submit" className="primary" disabled={faults.length > 0}>
            {t.make}
          </button>
          <button type="button" onClick={() => useWorkbench.setState({ page: 'start' })}>
            {t.back}
          </button>
        </div>
      </form>
      <aside className={faults.length > 0 ? 'growing stale' : 'growing'}>
        {made?.preview.plan ? (
          <FigureView figure={made.preview.plan} width={700} />
        ) : (
          <p className="quiet">{texts.start.drawing}</p>
        )}
        <dl>
          {made?.preview.facts.map(([title, value]) => (
            <div key={title}>
              <dt>{title}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
      </aside>
    </main>
  );
}

function SectionList() {
  const { engine } = useSession();
  const choices = useWorkbench((state) => state.choices);
  useEffect(() => {
    if (!choices) void engine.ask('choices', null).then((found) => useWorkbench.setState({ choices: found }));
  }, [engine, choices]);
  return (
    <datalist id="new-sections">
      {choices?.sections.map(({ id }) => (
        <option key={id} value={id} />
      ))}
    </datalist>
  );
}
