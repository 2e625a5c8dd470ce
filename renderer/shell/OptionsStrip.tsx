import { memo, useEffect, useRef } from 'react';
import type { OptionNumbers, OptionView } from '../../core/engine/comparison-view.ts';
import { FigureView } from '../parts/FigureView.tsx';
import { duplicateOption } from '../state/duplicate-option.ts';
import { none } from '../state/none.ts';
import { useSession } from '../state/session-context.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import './options-strip.css';

/** Options side by side along the bottom: plan, mass, what governs, and the change against the base. */
export function OptionsStrip() {
  const session = useSession();
  const options = useWorkbench((state) => state.comparison?.options ?? none);
  const shown = useWorkbench((state) => state.document?.option ?? null);
  const strip = useRef<HTMLElement>(null);
  useEffect(() => {
    strip.current?.querySelector('[aria-current]')?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }, [shown, options.length]);
  return (
    <nav ref={strip} className="options-strip" aria-label={texts.sheets.options}>
      {options.length === 0 && <p className="quiet">{texts.options.comparing}</p>}
      {options.map((option) => (
        <OptionCard key={option.id ?? ''} option={option} isShown={option.id === shown} />
      ))}
      {options.length > 0 && (
        <button type="button" className="add" onClick={() => void duplicateOption(session)}>
          {options.length === 1 ? texts.options.addFirst : texts.options.duplicate}
        </button>
      )}
    </nav>
  );
}

const OptionCard = memo(function OptionCard({ option, isShown }: { option: OptionView; isShown: boolean }) {
  const session = useSession();
  const { id, title, numbers, faults } = option;
  return (
    <button
      type="button"
      aria-current={isShown ? 'true' : undefined}
      title={title}
      onClick={() => void session.show(id)}
    >
      <span className="plan">{numbers && <FigureView figure={numbers.plan} width={56} plain />}</span>
      <span className="about">
        <strong>{title}</strong>
        {numbers ? <Numbers id={id} numbers={numbers} /> : <span className="loud">{faults[0]?.what}</span>}
      </span>
    </button>
  );
});

function Numbers({ id, numbers }: { id: string | null; numbers: OptionNumbers }) {
  const { quantities, highest, fails, unjudged } = numbers;
  const mass = quantities['mass.air']!;
  const t = texts.headline;
  return (
    <>
      <span className="amounts">
        <span>
          {mass.text} <span className="quiet">{mass.change}</span>
        </span>
        <AddedMass id={id} />
      </span>
      {highest && (
        <span className={highest.utilisation > 1 ? 'loud' : ''}>
          {highest.utilisation.toFixed(2)} {highest.title}
        </span>
      )}
      <span>
        <span className={fails > 0 ? 'loud' : 'quiet'}>{t.fails(fails)}</span>
        {', '}
        <span className={unjudged > 0 ? 'unjudged' : 'quiet'}>{t.unjudged(unjudged)}</span>
      </span>
    </>
  );
}

/** Added mass comes later than the rest; where the document says nothing of the water there is no line for it. */
function AddedMass({ id }: { id: string | null }) {
  const gains = useWorkbench((state) => state.waterGains.get(id));
  const isAsked = useWorkbench((state) => state.document?.read?.hydrodynamics !== undefined);
  const t = texts.options.water;
  if (!isAsked) return null;
  // As short as a number: the strip may not grow while it is worked out.
  if (!gains)
    return (
      <span className="quiet" title={t.workingOut}>
        {t.addedMass('…')}
      </span>
    );
  return 'rows' in gains ? <span>{t.addedMass(gains.rows[0]!.text)}</span> : null;
}
