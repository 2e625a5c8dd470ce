import { useRef, type ReactNode, type RefObject } from 'react';
import { SectionView } from '../parts/Blocks.tsx';
import { FieldGroup } from '../parts/FieldGroup.tsx';
import { FieldList, type FieldSpec } from '../parts/FieldList.tsx';
import { TableField } from '../parts/TableField.tsx';
import type { FieldPath, Json } from '../../core/document/edit.ts';
import { useField } from '../state/use-field.ts';
import { useHydrodynamics } from '../state/use-hydrodynamics.ts';
import { texts } from '../texts.ts';
import { MotionPart } from './MotionPart.tsx';
import { RecordedMotion, ScatterFields, SpectrumFields } from './SeaFields.tsx';
import './hydrodynamics.css';

const t = texts.hydrodynamics;
const sourceOf = (part: keyof typeof t.sourceOf): FieldSpec => ({ at: ['source'], takes: 'text', label: t.sourceOf[part], help: t.sourceHelp }); // prettier-ignore
const motion: readonly FieldSpec[] = [
  { at: ['amplitude'], takes: 'length', label: t.amplitude[0], help: t.amplitude[1] },
  { at: ['period'], takes: 'time', label: t.period[0], help: t.period[1] },
  sourceOf('motion'),
];
const sea: readonly FieldSpec[] = [
  { at: ['significantHeight'], takes: 'length', label: t.height[0], help: t.height[1] },
  { at: ['peakPeriod'], takes: 'time', label: t.peakPeriod[0], help: t.peakPeriod[1] },
  { at: ['peakedness'], takes: 'number', label: t.peakedness[0], help: t.peakedness[1], optional: true },
  { at: ['duration'], takes: 'time', label: t.storm[0], help: t.storm[1], optional: true },
  sourceOf('sea'),
];
const wave: readonly FieldSpec[] = [
  { at: ['height'], takes: 'length', label: t.waveHeight[0], help: t.waveHeight[1] },
  { at: ['period'], takes: 'time', label: t.wavePeriod[0], help: t.wavePeriod[1] },
  sourceOf('wave'),
];
const bed: readonly FieldSpec[] = [{ at: ['bed'], takes: 'length', label: t.bed[0], help: t.bed[1], optional: true }];
const growth: readonly FieldSpec[] = [{ at: ['years'], takes: 'number', label: t.years[0], help: t.years[1] }, { at: ['density'], takes: 'density', label: t.growthDensity[0], help: t.growthDensity[1], optional: true }, sourceOf('growth')]; // prettier-ignore

/** Motion, sea, bed and growth, and what the water does to the plate in them. */
export function HydrodynamicsSheet() {
  const inch = useField(['units']).raw === 'inch';
  const { section, closing, current, refusals } = useHydrodynamics();
  const stated = { source: t.toBeStated };
  const [water, order, left] = [
    useRef<HTMLDivElement>(null),
    useRef<HTMLDivElement>(null),
    useRef<HTMLDivElement>(null),
  ];
  return (
    <>
      <Jumps to={{ water, closing: order, motion: left }} />
      <Part
        name="motion"
        title={t.motion}
        of={motion}
        blank={{ amplitude: inch ? '1 ft' : '0.3 m', period: '7 s', ...stated }}
      />
      <Part
        name="sea"
        title={t.sea}
        of={sea}
        blank={{ significantHeight: inch ? '6 ft' : '2 m', peakPeriod: '7 s', ...stated }}
      />
      <SpectrumFields />
      <Part name="wave" title={t.wave} of={wave} blank={{ height: inch ? '6 ft' : '2 m', period: '7 s', ...stated }} />
      <ScatterFields />
      <RecordedMotion />
      <FieldGroup title={t.bed[0]}>
        <FieldList path={['hydrodynamics']} of={bed} />
      </FieldGroup>
      <Part name="growth" title={t.growth} of={growth} blank={{ years: 2, ...stated }}>
        <GrowthRows inch={inch} />
      </Part>
      <div aria-live="polite">{!current && <p className="quiet">{section ? t.again : t.reading}</p>}</div>
      {refusals.map(({ what, mend }) => (
        <p key={what} className="tone-loud">{`${what}. ${mend}`}</p>
      ))}
      <div ref={water}>{section && <SectionView section={section} level={2} />}</div>
      <div ref={order}>
        {section && closing === undefined && current && <p className="quiet">{t.closing}</p>}
        {closing && <SectionView section={closing} level={2} />}
      </div>
      <div ref={left}>
        <MotionPart />
      </div>
    </>
  );
}

type Result = keyof typeof t.jumps;

/** The sheet is long: a press each to what comes out. */
function Jumps({ to }: { to: Readonly<Record<Result, RefObject<HTMLDivElement | null>>> }) {
  return (
    <nav className="jumps" aria-label={t.jumpsTitle}>
      <span className="quiet small">{t.jumpsTitle}</span>
      {(Object.keys(t.jumps) as Result[]).map((result) => (
        <button key={result} type="button" className="link small" onClick={() => to[result].current?.scrollIntoView()}>
          {t.jumps[result]}
        </button>
      ))}
    </nav>
  );
}

/** Thicknesses of the user's own place, in place of the guidance's. */
function GrowthRows({ inch }: { inch: boolean }) {
  return (
    <TableField
      path={['hydrodynamics', 'growth', 'rows']}
      title={t.growthRows}
      columns={[
        { key: 'from', title: t.growthColumns.from },
        { key: 'to', title: t.growthColumns.to },
        { key: 'years', title: t.growthColumns.years, number: true },
        { key: 'thickness', title: t.growthColumns.thickness },
      ]}
      blank={
        inch
          ? { from: '0 ft', to: '200 ft', years: 2, thickness: '2 in' }
          : { from: '0 m', to: '60 m', years: 2, thickness: '50 mm' }
      }
    />
  );
}

function Part({
  name,
  title,
  of,
  blank,
  children,
}: {
  name: 'motion' | 'sea' | 'wave' | 'growth';
  title: string;
  of: readonly FieldSpec[];
  blank: Json;
  children?: ReactNode;
}) {
  const path: FieldPath = ['hydrodynamics', name];
  const field = useField(path);
  return (
    <FieldGroup title={title}>
      {field.raw === undefined ? (
        <button type="button" onClick={() => field.set(blank)}>
          {t.state(title)}
        </button>
      ) : (
        <>
          <FieldList path={path} of={of} />
          {children}
          <button type="button" className="link small" onClick={field.clear}>
            {t.takeOut(title)}
          </button>
        </>
      )}
    </FieldGroup>
  );
}
