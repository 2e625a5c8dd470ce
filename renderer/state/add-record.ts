import type { Json } from '../../core/document/edit.ts';
import { valueOf } from '../../core/host/answer.ts';
import { askRecords, holdRecord } from '../engine/record-client.ts';
import { chooseFileBytes } from '../parts/choose-file-bytes.ts';
import { texts } from '../texts.ts';
import { recordEntry } from './record-entry.ts';
import type { Session } from './session.ts';
import { useWorkbench } from './workbench.ts';

const accepted = '.csv,.tsv,.txt,.dat,text/csv,text/tab-separated-values,text/plain';
/** Longest name and layout that a document keeps. */
const [longestName, longestLayout] = [200, 2000];

/** A file of a person's choice, kept in the store as it came, and what it is made of; null when they turn back. */
export async function chosenRecord({ host }: Pick<Session, 'host'>) {
  const file = await chooseFileBytes(accepted);
  if (!file) return null;
  const name = file.name.slice(0, longestName);
  const head = await askRecords('open', { bytes: file.bytes });
  await holdRecord(head.hash, () => Promise.resolve(file.bytes));
  valueOf(await host.keepRecord({ name, bytes: file.bytes }));
  const layout = head.columns.map(({ name: own, unit }) => `${own} (${unit})`).join('; ').slice(0, longestLayout);
  return { record: { name, hash: head.hash, bytes: file.bytes.length, layout }, head };
} // prettier-ignore

/** Adds a test with a chosen record to the document. A file of a known layout is read as the one before it was. */
export async function addTankTest(session: Session): Promise<void> {
  const chosen = await chosenRecord(session);
  if (!chosen) return;
  const { document } = useWorkbench.getState();
  const { all, alike, fresh } = recordEntry('tank', chosen.record, texts.tank.untitled);
  const setup = alike?.setup ?? (await session.engine.ask('testSetup', { option: document?.option ?? null }));
  const value = [...all, { ...fresh, setup }] as unknown as Json;
  await session.edit({ kind: 'setField', option: null, path: ['tests', 'tank'], value });
}
