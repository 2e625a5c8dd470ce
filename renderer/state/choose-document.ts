import { valueOf } from '../../core/host/answer.ts';
import type { Host } from '../../core/host/host.ts';
import { chooseTextFile } from '../parts/choose-text-file.ts';

/** A document's file that a person chose; `handle`: by which the desktop writes to it later. */
export interface ChosenDocument {
  readonly name: string;
  readonly text: string;
  readonly handle: string | null;
  readonly readOnly: boolean;
}

/** Lets a person choose a document's file: by the desktop's dialog where it has one, else by the browser's. Null when they turn back. */
export async function chooseDocument(host: Host): Promise<ChosenDocument | null> {
  const about = await host.about({});
  if (about.ok && about.value.hasDialogs) return valueOf(await host.chooseFile({}));
  const file = await chooseTextFile();
  return file && { ...file, handle: null, readOnly: false };
}
