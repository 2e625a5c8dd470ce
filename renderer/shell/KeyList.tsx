import { texts } from '../texts.ts';
import { shortcuts } from './shortcuts.ts';

/** Every key and what it does, as keyboards here print them. */
export function KeyList() {
  const mac = navigator.platform.startsWith('Mac');
  return (
    <>
      <dl className="keys">
        {shortcuts.map(({ keys, title }) => (
          <div key={keys}>
            <dt>{title}</dt>
            <dd>
              <kbd>{inWords(keys, mac)}</kbd>
            </dd>
          </div>
        ))}
        {texts.shortcuts.others.map(([title, keys]) => (
          <div key={keys}>
            <dt>{title}</dt>
            <dd>
              <kbd>{keys}</kbd>
            </dd>
          </div>
        ))}
      </dl>
      <p className="quiet small">{texts.shortcuts.inPicture}</p>
    </>
  );
}

const inWords = (keys: string, mac: boolean): string =>
  keys
    .replace('Mod', mac ? '⌘' : 'Ctrl')
    .replace('ArrowRight', '→')
    .replace('ArrowLeft', '←')
    .replace('Escape', 'Esc')
    .split('+')
    .join(' + ');
