import { refusal } from '../refusal.ts';
import { schemaName } from './schema.ts';
import type { RawDocument } from './read-document.ts';

/** From each older schema version to the next. Version 1 is the first, so there is none yet; each new version adds its own. */
const steps: Readonly<Record<number, (raw: RawDocument) => RawDocument>> = {};

const present = Number(schemaName.split('/')[1]);

/** Brings raw JSON to the present schema version. Refuses a newer one, untouched, and a file that is no Stillplate document. */
export function migrate(raw: RawDocument): RawDocument {
  const match = /^stillplate-document\/(\d+)$/.exec(String(raw['schema']));
  if (!match)
    throw refusal({
      what:
        raw['schema'] === undefined
          ? 'The file names no schema'
          : `The schema “${String(raw['schema'])}” is not one of Stillplate's`,
      where: { path: 'schema' },
      mend: `A document says "schema": "${schemaName}".`,
    });
  let version = Number(match[1]);
  if (version > present)
    throw refusal({
      what: `The document is of schema version ${version}, this program reads up to ${present}`,
      where: { path: 'schema' },
      mend: 'Open it with a newer Stillplate; the file was not touched.',
    });
  let document = raw;
  for (; version < present; version++) {
    const step = steps[version];
    if (!step)
      throw refusal({
        what: `The schema version ${version} was never released`,
        where: { path: 'schema' },
        mend: `Write "${schemaName}".`,
      });
    document = step(document);
  }
  return document;
}
