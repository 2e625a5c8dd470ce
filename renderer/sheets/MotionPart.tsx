import { FieldGroup } from '../parts/FieldGroup.tsx';
import { FieldList, type FieldSpec } from '../parts/FieldList.tsx';
import { SectionView } from '../parts/Blocks.tsx';
import { askRecords } from '../engine/record-client.ts';
import { useField } from '../state/use-field.ts';
import { useAwaited } from '../state/use-record.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import { Answer } from './Answer.tsx';

const t = texts.motionLeft;
const link: readonly FieldSpec[] = [
  { at: ['stiffness'], takes: 'stiffness', label: t.stiffness[0], help: t.stiffness[1] },
  { at: ['damping'], takes: 'damping', label: t.damping[0], help: t.damping[1], optional: true },
  { at: ['link'], takes: ['line', 'strut'], label: t.link[0], help: t.link[1] },
  { at: ['source'], takes: 'text', label: t.source[0], help: t.source[1] },
];
const line: readonly FieldSpec[] = [
  { at: ['axialStiffness'], takes: 'force', label: t.lineStiffness[0], help: t.lineStiffness[1] },
  { at: ['length'], takes: 'length', label: t.lineLength[0], help: t.lineLength[1] },
  { at: ['source'], takes: 'text', label: t.lineSource[0], help: t.lineSource[1] },
];
const float: readonly FieldSpec[] = [
  { at: ['mass'], takes: 'mass', label: t.floatMass[0], help: t.floatMass[1] },
  { at: ['damping'], takes: 'damping', label: t.floatDamping[0], help: t.floatDamping[1] },
  { at: ['waterline'], takes: 'area', label: t.waterline[0], help: t.waterline[1] },
  { at: ['draught'], takes: 'length', label: t.draught[0], help: t.draught[1] },
];
const blankLine = { axialStiffness: '2 MN', length: '30 m', source: texts.hydrodynamics.toBeStated };
const blankFloat = { mass: '20 t', damping: '10 kN*s/m', waterline: '8 m^2', draught: '1 m' };

/** Float and power take-off over the plate, and the motion that they leave it in the stated sea. */
export function MotionPart() {
  const system = useField(['hydrodynamics', 'system']);
  const hasLine = useField(['hydrodynamics', 'system', 'line']);
  const hasFloat = useField(['hydrodynamics', 'system', 'float']);
  const view = useWorkbench(({ document }) => document);
  const ready = view !== null && view.faults.length === 0 && system.raw !== undefined && system.raw !== null;
  const key = ready ? JSON.stringify(['motion', view.option, view.raw]) : null;
  const asked = useAwaited(key, () =>
    askRecords('motion', { raw: view!.raw, option: view!.option, units: view!.read?.units ?? 'metric' }),
  );
  if (system.raw === undefined || system.raw === null)
    return (
      <FieldGroup title={t.title}>
        <button type="button" onClick={() => system.set({ stiffness: '20 kN/m', link: 'line', source: texts.hydrodynamics.toBeStated })}>
          {texts.hydrodynamics.state(t.title)}
        </button>
      </FieldGroup>
    ); // prettier-ignore
  const lines = hasLine.raw !== undefined && hasLine.raw !== null;
  const floats = hasFloat.raw !== undefined && hasFloat.raw !== null;
  return (
    <>
      <FieldGroup title={t.title}>
        <FieldList path={['hydrodynamics', 'system']} of={link} />
        {lines && <FieldList path={['hydrodynamics', 'system', 'line']} of={line} />}
        {floats && <FieldList path={['hydrodynamics', 'system', 'float']} of={float} />}
        <div className="acts">
          {lines ? (
            <button type="button" className="link small" onClick={hasLine.clear}>
              {texts.hydrodynamics.takeOut(t.line)}
            </button>
          ) : (
            <button type="button" onClick={() => hasLine.set(blankLine)}>
              {texts.hydrodynamics.state(t.line)}
            </button>
          )}
          {floats ? (
            <button type="button" className="link small" onClick={hasFloat.clear}>
              {texts.hydrodynamics.takeOut(t.float)}
            </button>
          ) : (
            <button type="button" onClick={() => hasFloat.set(blankFloat)}>
              {texts.hydrodynamics.state(t.float)}
            </button>
          )}
          <button type="button" className="link small" onClick={system.clear}>
            {texts.hydrodynamics.takeOut(t.title)}
          </button>
        </div>
      </FieldGroup>
      <Answer answer={asked} waiting={ready ? t.reading : null}>
        {(section) => <SectionView section={section} level={2} />}
      </Answer>
    </>
  );
}
