import { Handbook } from '../handbook/Handbook.tsx';
import { PlatePicture } from './PlatePicture.tsx';
import { Headline } from './Headline.tsx';
import { OptionsStrip } from './OptionsStrip.tsx';
import { Topics } from './Topics.tsx';
import { sheets } from '../sheets/sheets.ts';
import { useSolvedForces } from '../state/use-solved-forces.ts';
import { useWaterGains } from '../state/use-water-gains.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import './work.css';

/** The window at work: what decides across the top, the plate, one sheet beside it, the options along the bottom. */
export function Work() {
  useSolvedForces();
  useWaterGains();
  const sheet = useWorkbench((state) => state.sheet);
  const isWide = useWorkbench((state) => state.wide);
  const hasHandbook = useWorkbench((state) => state.handbook.isOpen);
  const Sheet = sheets[sheet];
  return (
    <div className={isWide ? 'work wide' : 'work'}>
      <Headline />
      <div className="scene-side">{hasHandbook ? <Handbook /> : <PlatePicture />}</div>
      <main className="sheet-side" aria-label={texts.sheets[sheet]}>
        <Topics />
        <div className="sheet" key={sheet}>
          <Sheet />
        </div>
      </main>
      <OptionsStrip />
    </div>
  );
}
