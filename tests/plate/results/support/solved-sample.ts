import { readFileSync } from 'node:fs';
import { modelOf } from '../../../../core/appraise.ts';
import { readDocument, readDocumentText, type RawDocument } from '../../../../core/document/read-document.ts';
import type { Model } from '../../../../core/model.ts';
import { readyPlate, solveLoading, type ReadyPlate, type SolvedLoading } from '../../../../core/plate/solve-plate.ts';

export const sampleModel = (name: string, change: (raw: RawDocument) => void = () => {}): Model => {
  const raw = JSON.parse(readFileSync(`samples/${name}.stillplate.json`, 'utf8')) as RawDocument;
  change(raw);
  return modelOf(readDocument(readDocumentText(JSON.stringify(raw))));
};

export const ready = (model: Model, size: number, without?: ReadonlySet<string>): ReadyPlate =>
  readyPlate(model, { size, ...(without ? { without } : {}) });

export function solvedLoading(
  plate: ReadyPlate,
  situationId: string,
  {
    loading = 0,
    variant = 0,
    stage = 'contact',
  }: { loading?: number; variant?: number; stage?: SolvedLoading['stage'] } = {},
): SolvedLoading {
  const situation = plate.model.loads.situations.find(({ id }) => id === situationId)!;
  const steps = solveLoading(plate, situation, { loading, variant, stage });
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
