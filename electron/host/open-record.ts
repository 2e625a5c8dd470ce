import { openText } from './open-text.ts';

/** Text of a record's file: at most some ten million rows at once. */
export async function openRecord(path: string): Promise<string> {
  const { text } = await openText(path, {
    is: 'record',
    named: 'a .csv file of readings',
    largest: 200_000_000,
    tooLarge: 'Cut the record into parts.',
  });
  return text;
}
