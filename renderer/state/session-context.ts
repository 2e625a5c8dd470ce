import { createContext, useContext } from 'react';
import type { Session } from './session.ts';

export const SessionContext = createContext<Session | null>(null);

/** The session of this window. */
export function useSession(): Session {
  const session = useContext(SessionContext);
  if (!session) throw new Error('A component stands outside the session');
  return session;
}
