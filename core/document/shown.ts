/** A given value as a message shows it back: a text in “ ”, a number plain, anything else as JSON, at most 80 characters. */
export function shown(given: unknown): string {
  if (typeof given === 'string') return `“${short(given)}”`;
  if (typeof given === 'number') return String(given);
  return given === undefined ? 'nothing' : short(JSON.stringify(given));
}

const short = (text: string): string => (text.length > 80 ? `${[...text].slice(0, 79).join('')}…` : text);
