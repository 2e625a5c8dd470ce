import type { Json } from '../../core/document/edit.ts';
import type { SeaDeployment } from '../../core/document/sea-tests-field.ts';
import { texts } from '../texts.ts';
import { chosenRecord } from './add-record.ts';
import { knownReading } from './layouts.ts';
import type { Session } from './session.ts';
import { useWorkbench } from './workbench.ts';

type RawDeployment = Pick<SeaDeployment, 'id' | 'title' | 'record'> & { readonly [name: string]: unknown };

/** Adds a deployment with a chosen record to the document. A file of a known layout is read as the one before it was. */
export async function addDeployment(session: Session): Promise<void> {
  const chosen = await chosenRecord(session);
  if (!chosen) return;
  const { record } = chosen;
  const { document } = useWorkbench.getState();
  const tests = document?.raw['tests'] as { readonly sea?: unknown } | undefined;
  const all = Array.isArray(tests?.sea) ? (tests.sea as RawDeployment[]) : [];
  const alike = all.find((one) => one.record.layout === record.layout);
  const taken = new Set(all.map(({ id }) => id));
  let number = all.length + 1;
  while (taken.has(`sea ${number}`)) number++;
  const water = document?.read?.water;
  const bed = document?.read?.hydrodynamics?.bed;
  const reading = (alike?.['reading'] as Json | undefined) ?? knownReading('sea', record.layout);
  const fresh = {
    id: `sea ${number}`,
    title: record.name.replace(/\.[^.]*$/, '') || texts.sea.untitled,
    record,
    ...(reading === undefined ? {} : { reading }),
    setup: alike?.['setup'] ?? {
      highPass: '25 s',
      ...(water ? { plateDepth: water.depth.typed } : {}),
      ...(water?.density ? { density: water.density.typed } : {}),
      ...(bed ? { waterDepth: bed.typed } : {}),
    },
  };
  const value = [...all, fresh] as unknown as Json;
  await session.edit({ kind: 'setField', option: null, path: ['tests', 'sea'], value });
}

/** Gives a deployment the file of another logger. */
export async function addSecondLogger(session: Session, index: number): Promise<void> {
  const chosen = await chosenRecord(session);
  if (!chosen) return;
  const value = { record: chosen.record } as unknown as Json;
  await session.edit({ kind: 'setField', option: null, path: ['tests', 'sea', index, 'second'], value });
}
