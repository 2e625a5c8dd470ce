import { useEffect, useRef } from 'react';
import { stageOf, stages, type SheetName, type StageName } from '../state/stages.ts';
import { useFoldAll } from '../parts/Folding.tsx';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import './topics.css';

/** The way through the work: its stages, and below them the topics of the stage at hand. A stage opens at the topic last seen in it. */
export function Topics() {
  const sheet = useWorkbench((state) => state.sheet);
  const isWide = useWorkbench((state) => state.wide);
  const lastIn = useRef<Partial<Record<StageName, SheetName>>>({});
  const here = stageOf(sheet);
  const folding = useFoldAll();
  useEffect(() => {
    lastIn.current[here] = sheet;
  }, [here, sheet]);

  return (
    <div className="topics">
      <nav className="stages" aria-label={texts.shell.stages}>
        {stages.map(({ stage, topics }) => (
          <button
            key={stage}
            type="button"
            className="plain"
            aria-current={stage === here ? 'step' : undefined}
            title={topics.map((name) => texts.sheets[name]).join(', ')}
            onClick={() => useWorkbench.setState({ sheet: lastIn.current[stage] ?? topics[0] })}
          >
            {texts.stages[stage]}
          </button>
        ))}
        <button
          type="button"
          className="plain widen"
          aria-pressed={isWide}
          onClick={() => useWorkbench.setState({ wide: !isWide })}
        >
          {isWide ? texts.shell.narrow : texts.shell.widen}
        </button>
      </nav>
      <nav className="of-stage" aria-label={texts.shell.topics}>
        {stages
          .find(({ stage }) => stage === here)!
          .topics.map((name) => (
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
        {folding && (
          <button type="button" className="plain widen small" onClick={folding.turn}>
            {folding.isFolded ? texts.shell.openAll : texts.shell.foldAll}
          </button>
        )}
      </nav>
    </div>
  );
}
