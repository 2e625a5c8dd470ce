import type { RefusalText } from '../refusal.ts';

/** What a text of JSON may ask for next. */
type Wanted =
  | 'a value'
  | 'a value or ]'
  | 'a name in quotation marks'
  | 'a name in quotation marks or }'
  | 'a colon'
  | 'a comma or the closing bracket'
  | 'the end of the file';

/** One token of RFC 8259, after white space. The text is unrolled, so that a long one costs no depth. */
const token =
  /[\t\n\r ]*(?:("[^"\\\u0000-\u001f]*(?:\\(?:["\\/bfnrt]|u[\da-fA-F]{4})[^"\\\u0000-\u001f]*)*")|(-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][-+]?\d+)?(?![\w.+-])|(?:true|false|null)(?!\w))|([{}[\],:]))/y;

/** What a token looks like when the file ends inside it. */
const cutToken = /^(?:"[^"\\\n]*(?:\\[^\n][^"\\\n]*)*\\?|-?[\d.]*(?:[eE][-+]?\d*)?|t|tr|tru|f|fa|fal|fals|n|nu|nul)$/;

/**
 * What keeps a text from being a document's JSON, with its line, or null: a slip, a cut-off end, nesting deeper than
 * `deepest`, and a name given twice in one object, which a plain JSON reader would pass over in silence.
 * Source of the grammar: RFC 8259; of one name once: RFC 7493 (I-JSON), 2.3.
 */
export function jsonFault(text: string, deepest: number): RefusalText | null {
  const open: { readonly names: Set<string> | null; name: string }[] = [];
  let wanted: Wanted = 'a value';
  let at = 0;
  const line = (): number => text.slice(0, at).split('\n').length;
  const path = (): string => open.flatMap(({ names, name }) => (names && name !== '' ? [name] : [])).join('.');
  const place = () => ({ line: line(), ...(path() ? { path: path() } : {}) });
  const cut = (): RefusalText => ({
    what: 'The file ends in the middle: its JSON is cut off',
    where: { line: text.split('\n').length },
    mend: 'Take a complete copy of the file; nothing was changed.',
  });
  const afterValue = (): Wanted => (open.length === 0 ? 'the end of the file' : 'a comma or the closing bracket');

  for (;;) {
    token.lastIndex = at;
    const match = token.exec(text);
    if (!match) {
      const rest = /[^\t\n\r ]/g;
      rest.lastIndex = at;
      const next = rest.exec(text);
      if (!next) return wanted === 'the end of the file' ? null : cut();
      at = next.index;
      if (cutToken.test(text.slice(at))) return cut();
      return {
        what: `The file is no valid JSON: ${shownAt(text, at)} stands where ${wanted} is expected`,
        where: place(),
        mend: mendAt(text, at, wanted),
      };
    }
    const [whole, string, scalar, mark = ''] = match;
    const inner = open.at(-1);
    const unexpected = (): RefusalText => {
      at += whole.length - whole.trimStart().length;
      return {
        what: `The file is no valid JSON: ${shownAt(text, at)} stands where ${wanted} is expected`,
        where: place(),
        mend: mendAt(text, at, wanted),
      };
    };
    const value = wanted === 'a value' || wanted === 'a value or ]';
    const name = wanted === 'a name in quotation marks' || wanted === 'a name in quotation marks or }';

    if (name && string !== undefined && inner?.names) {
      inner.name = JSON.parse(string) as string;
      if (inner.names.has(inner.name)) {
        at += whole.length;
        return {
          what: `The name “${inner.name}” is given twice in the same object`,
          where: place(),
          mend: 'Keep one of the two, or give one another name; nothing was changed.',
        };
      }
      inner.names.add(inner.name);
      wanted = 'a colon';
    } else if (value && (string !== undefined || scalar !== undefined)) wanted = afterValue();
    else if (value && (mark === '{' || mark === '[')) {
      if (open.length >= deepest)
        return {
          what: `The document is nested deeper than ${deepest} levels`,
          where: { line: line() },
          mend: 'Check that this is a Stillplate document.',
        };
      open.push({ names: mark === '{' ? new Set() : null, name: '' });
      wanted = mark === '{' ? 'a name in quotation marks or }' : 'a value or ]';
    } else if (wanted === 'a colon' && mark === ':') wanted = 'a value';
    else if (wanted === 'a comma or the closing bracket' && mark === ',')
      wanted = inner?.names ? 'a name in quotation marks' : 'a value';
    else if (inner && mark === (inner.names ? '}' : ']') && /bracket|or [\]}]$/.test(wanted)) {
      open.pop();
      wanted = afterValue();
    } else return unexpected();
    at += whole.length;
  }
}

/** The word or the first characters that stand there, on one line. */
function shownAt(text: string, at: number): string {
  const [line = ''] = text.slice(at, at + 24).split(/[\n\r]/);
  return `“${/^[\p{L}\p{N}_.+-]+|^[{}[\],:]/u.exec(line)?.[0] ?? line.trim()}”`;
}

function mendAt(text: string, at: number, wanted: Wanted): string {
  const first = text[at] ?? '';
  if (wanted === 'the end of the file') return 'Take out what follows the last bracket; nothing was changed.';
  if (wanted === 'a comma or the closing bracket') return 'Put a comma before it, or take it out; nothing was changed.';
  if (first === '/' || first === '#') return 'JSON has no comments: take it out; nothing was changed.';
  if (/[}\]]/.test(first)) return 'Take away the comma before it; nothing was changed.';
  if (/^[-+]?(NaN|Infinity)/.test(text.slice(at, at + 9)))
    return 'Write a number, or take the field out; nothing was changed.';
  if (first === '"')
    return 'End the text with a quotation mark on the same line, and write each backslash twice; nothing was changed.';
  if (/[\p{L}'“”„]/u.test(first)) return 'Put texts and names in straight quotation marks ("…"); nothing was changed.';
  return 'Mend the JSON at that place; nothing was changed.';
}
