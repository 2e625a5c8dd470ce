import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './App.tsx';
import { engineClient } from './engine/engine-client.ts';
import { openHost } from './host/host.ts';
import { hearDesktop } from './state/hear-desktop.ts';
import { openAgain } from './state/open-again.ts';
import { createSession } from './state/session.ts';
import { SessionContext } from './state/session-context.ts';
import './styles/base.css';

const engine = engineClient(() => new Worker(new URL('engine-worker.js', document.baseURI), { type: 'module' }));
const session = createSession(openHost(), engine);
hearDesktop(session);
void openAgain(session);

createRoot(document.getElementById('window')!).render(
  <StrictMode>
    <SessionContext value={session}>
      <App />
    </SessionContext>
  </StrictMode>,
);
