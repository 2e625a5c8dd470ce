import { verbs } from './verbs.ts';

/** Help for one command, or for all. */
export function helpText(verb?: string): string {
  const command = verb !== undefined && Object.hasOwn(verbs, verb) ? verbs[verb] : undefined;
  if (command) return `stillplate ${command.usage}\n\n${command.purpose}\n\n${command.help}\n`;
  const lines = Object.entries(verbs).map(([name, { purpose }]) => `  ${name.padEnd(10)} ${purpose}`);
  return [
    'Stillplate sizes infill panels for a submerged reaction plate and writes the check note that a licensed engineer signs.',
    '',
    'Usage: stillplate COMMAND [FILE] [options]',
    '',
    ...lines,
    '',
    'A first hour: "stillplate new plate.stillplate" writes a document that you can edit; "stillplate check plate.stillplate"',
    'says what holds and what does not; "stillplate compare plate.stillplate" puts its options side by side;',
    '"stillplate note plate.stillplate --out note.pdf" writes the note. "stillplate help check" says more of a command.',
    '',
    'Exit codes: 0 all judged and pass; 1 a check fails or cannot be judged (the words say which);',
    '2 bad input; 3 a file cannot be written; 4 a fault in the program itself.',
    '',
    'Results are no approval: a licensed engineer reviews the note, and local codes, class and lifting rules take precedence.',
  ].join('\n');
}
