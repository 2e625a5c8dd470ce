import { SectionView } from '../parts/Blocks.tsx';
import { Folding } from '../parts/Folding.tsx';
import { FieldGroup } from '../parts/FieldGroup.tsx';
import { FieldList } from '../parts/FieldList.tsx';
import { OptionalPart } from '../parts/OptionalPart.tsx';
import { useField } from '../state/use-field.ts';
import { useSection } from '../state/use-section.ts';
import { texts } from '../texts.ts';
import { Lift } from './recovery/Lift.tsx';
import { Releases } from './recovery/Releases.tsx';
import { ChosenWay, Ways } from './recovery/Ways.tsx';
import { acoustic, float, mainFloat, plan, rope } from './recovery/recovery-fields.ts';
import { newAcoustic, newMainFloat, newRecovery } from './recovery/recovery-starts.ts';

const t = texts.recovery;

/** Putting the plate down and getting it back: what is there for it, and what comes of it. */
export function DeploymentAndRecoverySheet() {
  const field = useField(['recovery']);
  const inch = useField(['units']).raw === 'inch';
  const section = useSection('recovery');
  return (
    <>
      {field.raw === undefined ? (
        <p>
          <button type="button" onClick={() => field.set(newRecovery(inch))}>
            {t.describe}
          </button>
        </p>
      ) : (
        <>
          <FieldGroup title={t.plan}>
            <FieldList path={['recovery']} of={plan} />
            <ChosenWay />
          </FieldGroup>
          <Folding isUsuallyFolded title={t.ways}>
            <Ways />
          </Folding>
          <Folding isUsuallyFolded title={`${t.rope}, ${t.float.toLowerCase()}`}>
            <FieldGroup title={t.rope}>
              <FieldList path={['recovery', 'rope']} of={rope} />
            </FieldGroup>
            <FieldGroup title={t.float}>
              <FieldList path={['recovery', 'float']} of={float} />
            </FieldGroup>
          </Folding>
          <Folding isUsuallyFolded title={t.releases}>
            <Releases />
            <OptionalPart
              path={['recovery', 'acoustic']}
              title={t.acoustic}
              add={t.addAcoustic}
              remove={t.removeAcoustic}
              of={acoustic}
              first={newAcoustic(inch)}
            />
          </Folding>
          <Folding isUsuallyFolded title={t.lift}>
            <Lift />
            <OptionalPart
              path={['recovery', 'mainFloat']}
              title={t.mainFloat}
              add={t.addMainFloat}
              remove={t.removeMainFloat}
              of={mainFloat}
              first={newMainFloat(inch)}
            />
          </Folding>
        </>
      )}
      {section ? <SectionView section={section} level={2} /> : <p className="quiet">{t.reading}</p>}
    </>
  );
}
