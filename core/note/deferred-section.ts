import type { Appraisal } from '../appraise.ts';
import { listedNames } from './listed-names.ts';
import { placeWords } from '../place-words.ts';
import type { Block, Section } from './note.ts';

/** What no document can take off the licensed engineer. */
export const leftToTheEngineer: readonly string[] = [
  'Execution class, welding procedures, certificates of the material, preload and inspection are assumed as stated, and verified by nobody here.',
  'The lift plan, rigging, permits, class and port rules, and whether people may dive on the plate.',
  'Whether the loads stated by the author are those of the site and the float.',
];

/** What this note leaves to the licensed engineer, in one place: nothing of it is judged, or it rests on someone's word. */
export function deferredSection({ model, rows, limitStates }: Appraisal): Section {
  const open = rows.filter(({ verdict }) => verdict === 'cannot be judged');
  const groups = new Map<string, { title: string; reason: string; places: Set<string> }>();
  for (const { title, reason, place } of open) {
    const key = `${title}|${reason}`;
    const group = groups.get(key) ?? { title, reason, places: new Set<string>() };
    groups.set(key, { ...group, places: group.places.add(placeWords(model, place)) });
  }
  const bare = limitStates.filter(({ verdict, made }) => verdict === 'not judged' && made === 0);
  const overrides = model.document.basis.overrides;
  const smaller = rows.filter(({ both }) => both && both.smaller !== '').length;
  const memory = new Set(rows.filter(({ verdict, sources }) => verdict !== 'not applicable' && sources.some((s) => s.memory)).map(({ id }) => id)).size; // prettier-ignore
  const blocks: Block[] = [
    {
      kind: 'list',
      items: [
        ...bare.map(({ name, remark }) => `${name}: ${remark}.`),
        ...overrides.map(({ factor, value, reason }) => `The factor ${factor} is taken as ${value}: ${reason}.`),
        ...(smaller > 0 ? [`${smaller} ${smaller === 1 ? 'demand is' : 'demands are'} taken at the smaller of two values, for the reasons given.`] : []), // prettier-ignore
        ...(memory > 0 ? [`${memory} checks cite a clause from memory: look it up before relying on it.`] : []),
        ...leftToTheEngineer,
      ],
    },
  ];
  if (groups.size > 0)
    blocks.unshift({
      kind: 'table',
      caption: 'Checks that could not be judged',
      columns: [
        { title: 'Check', width: 0.26 },
        { title: 'Where', width: 0.24 },
        { title: 'Why not', width: 0.5 },
      ],
      rows: [...groups.values()].map(({ title, reason, places }) => [title, listedNames([...places]), reason]),
    });
  return { title: 'Left to the licensed engineer', blocks };
}
