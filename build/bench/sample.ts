import { readFile } from 'node:fs/promises';

/** Text of a sample document; run from the project's folder. */
export const sample = (name: string): Promise<string> => readFile(`samples/${name}.stillplate.json`, 'utf8');
