import { handbookWords } from '../../core/handbook/texts/words.ts';
import { catalogueLabels } from '../sheets/catalogue/catalogue-fields.ts';
import { recoveryLabels } from '../sheets/recovery/recovery-fields.ts';
import { openHandbook } from '../state/handbook-place.ts';
import { openCheck } from '../state/open-check.ts';
import { topics, type SheetName } from '../state/stages.ts';
import { useWorkbench, type Workbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import { labelsOfSheets } from './labels-of-sheets.ts';

/** Something that can be found by typing: a field, a check, a bay or a sheet. */
export interface Findable {
  readonly title: string;
  readonly kind: string;
  readonly go: () => void;
}

const handbookChapters = ['hour', 'theory', 'limits', 'glossary', 'keys'] as const;

/** Everything that can be found, in the window as it is now. */
export function findables(
  { result, comparison }: Pick<Workbench, 'result' | 'comparison'>,
  show: (option: string | null) => void,
): readonly Findable[] {
  const t = texts.finder;
  const sheets = topics.map((sheet) => ({
    title: texts.sheets[sheet],
    kind: t.sheet,
    go: () => useWorkbench.setState({ sheet }),
  }));
  const field = (sheet: SheetName, label: string): Findable => ({
    title: label,
    kind: `${t.field}, ${texts.sheets[sheet]}`,
    go: () => {
      useWorkbench.setState({ sheet });
      // The sheet is drawn first; then its field takes the focus.
      requestAnimationFrame(() => requestAnimationFrame(() => focusField(label)));
    },
  });
  const fields = [
    ...Object.entries(labelsOfSheets).flatMap(([sheet, labels]) =>
      labels.map((label) => field(sheet as SheetName, label)),
    ),
    ...[...recoveryLabels, texts.recovery.legs[0]].map((label) => field('recovery', label)),
    ...catalogueLabels.map((label) => field('catalogue', label)),
  ];
  const checks = (result?.rows ?? []).map((row) => ({
    title: `${row.title}, ${row.placeWords}${row.direction ? ` (${row.direction})` : ''}`,
    kind: `${t.check} ${row.utilisation === null ? texts.verdict[row.verdict] : row.utilisation.toFixed(2)}`,
    go: () => openCheck(row),
  }));
  const theory = [...new Map((result?.rows ?? []).map(({ id, title }) => [id, title]))].map(([id, title]) => ({
    title,
    kind: `${texts.handbook.title}: ${t.theory}`,
    go: () => openHandbook('theory', id),
  }));
  const chapters = handbookChapters.map((chapter) => ({
    title: chapter === 'keys' ? texts.shortcuts.list : handbookWords[chapter].title,
    kind: texts.handbook.title,
    go: () => openHandbook(chapter),
  }));
  const bays = (result?.bays ?? []).map(({ id, design }) => ({
    title: id,
    kind: `${t.bay}, ${design ?? texts.panels.open}`,
    go: () => useWorkbench.setState({ sheet: 'panels', selection: id, bays: [id] }),
  }));
  const tubes = (result?.tubes ?? []).map(({ id, words, section }) => ({
    title: words,
    kind: section,
    go: () => useWorkbench.setState({ sheet: 'grid', selection: id }),
  }));
  const options = (comparison?.options ?? []).map(({ id, title }) => ({ title, kind: t.option, go: () => show(id) }));
  return [...sheets, ...options, ...bays, ...tubes, ...fields, ...checks, ...chapters, ...theory];
}

function focusField(label: string): void {
  const found = [...document.querySelectorAll<HTMLLabelElement>('.sheet label')].find(
    ({ textContent }) => textContent?.trim() === label,
  );
  for (let part = found?.closest('details'); part; part = part.parentElement?.closest('details')) part.open = true;
  found?.scrollIntoView({ block: 'center' });
  document.getElementById(found?.htmlFor ?? '')?.focus();
}
