import type { Json } from '../../core/document/edit.ts';
import { texts } from '../texts.ts';
import { chosenRecord } from './add-record.ts';
import { recordEntry } from './record-entry.ts';
import type { Session } from './session.ts';
import { useWorkbench } from './workbench.ts';

/** Adds a deployment with a chosen record to the document. A file of a known layout is read as the one before it was. */
export async function addDeployment(session: Session): Promise<void> {
  const chosen = await chosenRecord(session);
  if (!chosen) return;
  const { all, alike, fresh } = recordEntry('sea', chosen.record, texts.sea.untitled);
  const { water, hydrodynamics } = useWorkbench.getState().document?.read ?? {};
  const setup = alike?.setup ?? {
    highPass: '25 s',
    ...(water ? { plateDepth: water.depth.typed } : {}),
    ...(water?.density ? { density: water.density.typed } : {}),
    ...(hydrodynamics?.bed ? { waterDepth: hydrodynamics.bed.typed } : {}),
  };
  const value = [...all, { ...fresh, setup }] as unknown as Json;
  await session.edit({ kind: 'setField', option: null, path: ['tests', 'sea'], value });
}

/** Gives a deployment the file of another logger. */
export async function addSecondLogger(session: Session, index: number): Promise<void> {
  const chosen = await chosenRecord(session);
  if (!chosen) return;
  const value = { record: chosen.record } as unknown as Json;
  await session.edit({ kind: 'setField', option: null, path: ['tests', 'sea', index, 'second'], value });
}
