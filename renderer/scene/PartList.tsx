import { useId, useMemo, useState } from 'react';
import { quantityText } from '../../core/quantity/format-quantity.ts';
import type { Reading } from '../../core/scene/reading.ts';
import type { PartKind, Scene, ScenePart } from '../../core/scene/scene.ts';
import { sceneTexts as texts } from './scene-texts.ts';

const kinds: readonly PartKind[] = ['panel', 'bay', 'tube', 'attachment', 'weld', 'bolt'];

/** The parts of the picture as text: for screen readers and the keyboard. One kind is open at a time. */
export function PartList({
  scene,
  reading,
  selection,
  onSelect,
}: {
  readonly scene: Scene;
  readonly reading: Reading | null;
  readonly selection: string | null;
  readonly onSelect: (part: string | null) => void;
}) {
  const groups = useMemo(() => {
    const byKind = new Map<PartKind, ScenePart[]>(kinds.map((kind) => [kind, []]));
    for (const part of scene.parts) byKind.get(part.kind)!.push(part);
    return [...byKind].filter(([, parts]) => parts.length > 0);
  }, [scene]);
  const [open, setOpen] = useState<PartKind | null>(null);
  const id = useId();
  return (
    <section className="scene-parts" aria-label={texts.list}>
      {groups.map(([kind, parts]) => (
        <div key={kind}>
          <button
            type="button"
            aria-expanded={open === kind}
            aria-controls={`${id}-${kind}`}
            onClick={() => setOpen(open === kind ? null : kind)}
          >
            {texts.listGroups[kind]} <span className="count">{parts.length}</span>
          </button>
          {open === kind && (
            <ul id={`${id}-${kind}`}>
              {parts.map((part) => (
                <li key={part.id}>
                  <button
                    type="button"
                    aria-pressed={part.id === selection}
                    onClick={() => onSelect(part.id === selection ? null : part.id)}
                  >
                    {part.title}
                    <ValueOf part={part} reading={reading} />
                  </button>
                </li>
              ))}
            </ul>
          )}
        </div>
      ))}
    </section>
  );
}

function ValueOf({ part, reading }: { readonly part: ScenePart; readonly reading: Reading | null }) {
  const value = reading?.values.get(part.id);
  const verdict = reading?.verdicts.get(part.id);
  if (!reading || value === undefined) return null;
  const words = [
    ...(value === null ? [] : [quantityText(value, reading.unit, 3)]),
    ...(verdict ? [texts.verdict[verdict]] : value === null ? [texts.legend.unjudged] : []),
  ];
  return (
    <span className="value" title={reading.reasons.get(part.id)}>
      {' '}
      {words.join(', ')}
    </span>
  );
}
