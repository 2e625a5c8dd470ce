import { FieldGroup } from '../../parts/FieldGroup.tsx';
import { FieldList } from '../../parts/FieldList.tsx';
import { ListField } from '../../parts/ListField.tsx';
import { StatedNumber } from '../../parts/StatedNumber.tsx';
import { TableField } from '../../parts/TableField.tsx';
import { useField } from '../../state/use-field.ts';
import { texts } from '../../texts.ts';
import { lift, shackle, sling } from './recovery-fields.ts';
import { newLift } from './recovery-starts.ts';

const t = texts.recovery;
const path = ['recovery', 'lift'] as const;

/** The lift: sea, vessel, what may be carried, slings. */
export function Lift() {
  const field = useField(path);
  const inch = useField(['units']).raw === 'inch';
  if (field.raw === undefined)
    return (
      <FieldGroup title={t.lift}>
        <button type="button" onClick={() => field.set(newLift(inch))}>
          {t.addLift}
        </button>
      </FieldGroup>
    );
  return (
    <>
      <FieldGroup title={t.lift}>
        <FieldList path={path} of={lift} />
        <StatedNumber path={[...path, 'dragCoefficient']} label={t.drag[0]} help={t.drag[1]} first={2.5} />
        <StatedNumber path={[...path, 'slamCoefficient']} label={t.slam[0]} help={t.slam[1]} first={5} />
        <p>{t.motions}</p>
        <TableField
          path={[...path, 'motions']}
          title={t.motions}
          columns={[
            { key: 'period', title: t.period },
            { key: 'heave', title: t.heave },
            { key: 'roll', title: t.roll },
            { key: 'pitch', title: t.pitch },
          ]}
          blank={{ period: '6 s', heave: inch ? '10 in' : '0.25 m', roll: '1.5 deg', pitch: '1 deg' }}
        />
        <button type="button" className="link small" onClick={field.clear}>
          {t.removeLift}
        </button>
      </FieldGroup>
      <FieldGroup title={t.slings}>
        <FieldList path={[...path, 'sling']} of={sling} />
        <ListField path={[...path, 'sling', 'lengths']} label={t.legs[0]} help={t.legs[1]} />
        <StatedNumber path={[...path, 'sling', 'skew']} label={t.skew[0]} help={t.skew[1]} first={1.25} />
        <FieldList path={[...path, 'shackle']} of={shackle} />
      </FieldGroup>
    </>
  );
}
