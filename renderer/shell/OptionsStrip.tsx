import { FigureView } from '../parts/FigureView.tsx';
import { useSession } from '../state/session-context.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import './options-strip.css';

/** Options side by side along the bottom: plan, mass, what governs, and the change against the base. */
export function OptionsStrip() {
  const session = useSession();
  const comparison = useWorkbench((state) => state.comparison);
  const shown = useWorkbench((state) => state.document?.option ?? null);
  return (
    <nav className="options-strip" aria-label={texts.sheets.options}>
      {comparison?.options.map(({ id, title, numbers, faults }) => (
        <button
          key={id ?? ''}
          type="button"
          aria-current={id === shown ? 'true' : undefined}
          onClick={() => void session.show(id)}
        >
          <span className="plan">{numbers && <FigureView figure={numbers.plan} width={96} plain />}</span>
          <span className="about">
            <strong>{title}</strong>
            {numbers ? (
              <>
                <span>
                  {numbers.quantities['mass.air']!.text}{' '}
                  <span className="quiet">{numbers.quantities['mass.air']!.change}</span>
                </span>
                <span className={numbers.fails > 0 ? 'loud' : ''}>
                  {numbers.highest ? `${numbers.highest.utilisation.toFixed(2)} ${numbers.highest.title}` : '–'}
                </span>
                <span className="small quiet">
                  {texts.headline.fails(numbers.fails)}, {texts.headline.unjudged(numbers.unjudged)}
                </span>
              </>
            ) : (
              <span className="loud">{faults[0]?.what}</span>
            )}
          </span>
        </button>
      ))}
    </nav>
  );
}
