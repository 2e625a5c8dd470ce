import { PlatePicture } from './PlatePicture.tsx';
import { Headline } from './Headline.tsx';
import { OptionsStrip } from './OptionsStrip.tsx';
import { sheets } from '../sheets/sheets.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import './work.css';

/** The window at work: what decides across the top, the plate, one sheet beside it, the options along the bottom. */
export function Work() {
  const sheet = useWorkbench((state) => state.sheet);
  const { Sheet } = sheets.find(({ name }) => name === sheet)!;
  return (
    <div className="work">
      <Headline />
      <div className="scene-side">
        <PlatePicture />
      </div>
      <main className="sheet-side" aria-label={texts.sheets[sheet]}>
        <nav className="topics" aria-label="Topics">
          {sheets.map(({ name }) => (
            <button
              key={name}
              type="button"
              className="plain"
              aria-current={name === sheet ? 'page' : undefined}
              onClick={() => useWorkbench.setState({ sheet: name })}
            >
              {texts.sheets[name]}
            </button>
          ))}
        </nav>
        <div className="sheet">
          <Sheet />
        </div>
      </main>
      <OptionsStrip />
    </div>
  );
}
