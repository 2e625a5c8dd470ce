import { timingSafeEqual } from 'node:crypto';
import type { IncomingMessage } from 'node:http';
import { wireType } from '../../core/host/wire.ts';

/** What the server knows of itself when it judges a request. */
export interface Site {
  readonly port: number;
  readonly cookieName: string;
  /** Value of the cookie that the first address gives. */
  readonly secret: string;
}

/** Why a request is refused, with the status of HTTP; null lets it pass. */
export type Verdict = { readonly status: number; readonly what: string } | null;
type Guard = (request: IncomingMessage, site: Site) => Verdict;

/**
 * What every request must pass, in this order. A page of another site can make a browser send requests here, and a name
 * of its own can be made to point here (DNS rebinding): so the names are checked, not only the cookie.
 */
export const guards = {
  /** The request names us by a loopback name: a foreign name that points here does not. */
  host: ({ headers }, { port }) =>
    namesOf(port).includes(headers.host ?? '') ? null : { status: 421, what: 'This name is not ours' },

  /** Nothing here is called in another way; OPTIONS would ask leave for another site. */
  method: ({ method }) =>
    method === 'GET' || method === 'HEAD' || method === 'POST'
      ? null
      : { status: 405, what: 'This method is not answered here' },

  /** A call comes from our own page, and says so; a read may come without Origin, but not from another site. */
  origin: ({ headers, method }, { port }) => {
    const { origin } = headers;
    const site = headers['sec-fetch-site'];
    const isOurs = origin === undefined ? method !== 'POST' : originsOf(port).includes(origin);
    return isOurs && (site === undefined || site === 'same-origin' || site === 'none')
      ? null
      : { status: 403, what: 'Another site asked' };
  },

  /** Only a browser that opened the address with the token has the cookie. */
  cookie: ({ headers }, { cookieName, secret }) =>
    cookiesOf(headers.cookie ?? '').some(([name, value]) => name === cookieName && sameText(value, secret))
      ? null
      : { status: 403, what: 'Open the address that Stillplate printed when it was started' },

  /** A form of another site cannot send this type without asking first. */
  type: ({ headers, method }) =>
    method !== 'POST' || headers['content-type'] === wireType
      ? null
      : { status: 415, what: 'This is no message of Stillplate' },
} satisfies Record<string, Guard>;

export type GuardName = keyof typeof guards | 'path' | 'size' | 'token';

export const namesOf = (port: number): readonly string[] => [`127.0.0.1:${port}`, `[::1]:${port}`, `localhost:${port}`];
const originsOf = (port: number): readonly string[] => namesOf(port).map((name) => `http://${name}`);

const cookiesOf = (header: string): readonly (readonly [string, string])[] =>
  header.split(';').map((pair) => {
    const at = pair.indexOf('=');
    return [pair.slice(0, at).trim(), pair.slice(at + 1).trim()];
  });

/** Takes as long for a near miss as for a far one. */
export function sameText(given: string, wanted: string): boolean {
  const [a, b] = [Buffer.from(given), Buffer.from(wanted)];
  return a.length === b.length && timingSafeEqual(a, b);
}
