import { spreadInputs } from '../../../core/document/spreads-field.ts';
import { CopyButton } from '../../parts/CopyButton.tsx';
import { figureItem } from '../../parts/figure-item.ts';
import { SpreadBars } from '../../parts/SpreadBars.tsx';
import { TableField } from '../../parts/TableField.tsx';
import { startSensitivity, useSearch } from '../../state/search.ts';
import { useField } from '../../state/use-field.ts';
import { useSession } from '../../state/session-context.ts';
import { useWorkbench } from '../../state/workbench.ts';
import { texts } from '../../texts.ts';

const t = texts.sensitivity;

/** How far inputs may be off, and what each then does to the check that governs. */
export function SensitivityPart() {
  const session = useSession();
  const spreads = useField(['spreads']);
  const { state, sensitive, varying } = useSearch();
  const document = useWorkbench((all) => all.document);
  const isCurrent = sensitive !== null && sensitive.raw === document?.raw && sensitive.option === document?.option;
  const rows = Array.isArray(spreads.raw) ? (spreads.raw as readonly { readonly input?: unknown }[]) : [];
  const unused = spreadInputs.find((input) => !rows.some((row) => row.input === input)) ?? spreadInputs[0];
  const begin = async () => {
    await session.settled();
    startSensitivity();
  };
  return (
    <section className="sensitivity">
      <h3>{t.title}</h3>
      <p className="quiet">{t.help}</p>
      <TableField
        path={['spreads']}
        title={t.spreads}
        columns={[
          { key: 'input', title: t.input, choices: spreadInputs },
          { key: 'low', title: t.low, number: true },
          { key: 'high', title: t.high, number: true },
          { key: 'source', title: t.source },
        ]}
        blank={{ input: unused, low: -0.1, high: 0.1, source: t.toBeStated }}
      />
      <button
        type="button"
        disabled={rows.length === 0 || state !== 'idle' || varying !== null || (document?.faults.length ?? 1) > 0}
        onClick={() => void begin()}
      >
        {t.start}
      </button>
      {varying && <p className="quiet">{t.far(varying.done, varying.of)}</p>}
      {sensitive && (
        <>
          {!isCurrent && <p className="loud">{t.stale}</p>}
          <p>{t.governs(sensitive.found.governing)}</p>
          <SpreadBars found={sensitive.found} />
          <CopyButton
            label={texts.copy.figure}
            what={() => figureItem(window.document.querySelector<SVGSVGElement>('.spread-bars')!)}
          />
          {sensitive.found.moved.flatMap(({ input, otherAtLow, otherAtHigh }) =>
            [otherAtLow, otherAtHigh].flatMap((other, n) =>
              other ? [<p key={`${input}${n}`}>{t.other(t.inputs[input], n === 0, other)}</p>] : [],
            ),
          )}
          <p className="quiet">{t.caution}</p>
        </>
      )}
    </section>
  );
}
