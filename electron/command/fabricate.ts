import { mkdir } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { appraise } from '../../core/appraise.ts';
import { fabricationPack, type Stock } from '../../core/fabrication/fabrication-pack.ts';
import { generalArrangement } from '../../core/fabrication/general-arrangement.ts';
import { gltfOf } from '../../core/scene/gltf-of.ts';
import { sceneOf } from '../../core/scene/scene-of.ts';
import { stlOf } from '../../core/scene/stl-of.ts';
import { quantityText } from '../../core/quantity/format-quantity.ts';
import { refusal } from '../../core/refusal.ts';
import { programVersion } from '../../core/result.ts';
import { openDocument } from '../host/open-document.ts';
import { writeFileWhole } from '../host/write-file.ts';
import { chosenOption } from './chosen-option.ts';
import { optionsOf } from './options-of.ts';
import { positiveOption } from './quantity-option.ts';
import { exit } from './terminal.ts';
import type { Verb } from './verbs.ts';

const usage = 'fabricate FILE --out FOLDER [--option ID] [--stock AxB] [--tube-stock L] [--gap G] [--kerf K] [--json]';
const options = {
  out: { type: 'string' },
  option: { type: 'string' },
  stock: { type: 'string' },
  'tube-stock': { type: 'string' },
  gap: { type: 'string' },
  kerf: { type: 'string' },
  json: { type: 'boolean' },
} as const;

export const fabricateVerb: Verb = {
  usage,
  purpose: 'writes what the shop cuts, drills and assembles: flat patterns, cut lists, holes, bolts, welds',
  help: [
    '  --out FOLDER           DXF and SVG of each plate part, CSV lists, general arrangement as PDF, and the plate as',
    '                         solids (plate.glb in metres, plate.stl in mm); files of the same names are written over',
    '  --option ID            the document’s chosen option by default; base: as it stands',
    '  --stock 3000mmx1500mm  stock sheet that plates are nested on; 3000 mm x 1500 mm by default',
    '  --tube-stock 12m       length that tubes come in; 12 m by default',
    '  --gap 10mm             between nested parts           --kerf 3mm   lost at each cut of a tube',
    '  --json                 what is needed, as one object (schema stillplate-fabrication/1)',
    '',
    'A draft for the shop: cut only from a pack that goes with a signed note. Kerf is the cutter’s.',
    '',
    'Example: stillplate fabricate samples/middle.stillplate.json --out out/fabrication',
  ].join('\n'),
  run: async (args, on) => {
    const { values, file } = optionsOf(args, options, usage, 1);
    if (values.out === undefined) throw refusal({ what: '--out is missing', mend: `Usage: stillplate ${usage}` });
    const length = (name: 'tube-stock' | 'gap' | 'kerf', otherwise: number): number =>
      values[name] === undefined ? otherwise : positiveOption(`--${name}`, values[name], 'length');
    const stock: Stock = {
      sheet: sheetOf(values.stock),
      bar: length('tube-stock', 12),
      gap: length('gap', 0.01),
      kerf: length('kerf', 0.003),
    };
    const { raw, document } = await openDocument(resolve(on.folder, file));
    const { model, optionTitle, documentHash } = appraise(raw, document, chosenOption(document, values.option));
    const pack = fabricationPack(model, stock);
    const folder = resolve(on.folder, values.out);
    await mkdir(folder, { recursive: true });
    const { writeNote } = await import('../host/note/write-note.ts');
    const scene = sceneOf(model);
    const files: readonly { readonly name: string; readonly text: string | Uint8Array }[] = [
      ...pack.files,
      {
        name: 'general-arrangement.pdf',
        text: await writeNote(generalArrangement(model, pack, optionTitle, documentHash)),
      },
      { name: 'plate.glb', text: gltfOf(scene) },
      { name: 'plate.stl', text: stlOf(scene) },
    ];
    for (const { name, text } of files) await writeFileWhole(join(folder, name), text);
    if (values.json) {
      const { parts, sheets, bars } = pack;
      on.out(JSON.stringify({ schema: 'stillplate-fabrication/1', programVersion, option: optionTitle, parts, sheets, bars, files: files.map(({ name }) => name) }, null, 2)); // prettier-ignore
      return exit.passes;
    }
    const percent = (part: number): string => `${(100 * part).toFixed(1)} %`;
    on.out(`${document.project.name}. ${optionTitle}.`);
    for (const { number, panels, pattern } of pack.parts)
      on.out(`  ${number}: ${panels.length} of ${quantityText(pattern.width, 'mm')} × ${quantityText(pattern.height, 'mm')} × ${quantityText(pattern.thickness, 'mm')}, ${pattern.holes.length} holes, ${quantityText(pattern.mass, 'kg')} each: ${panels.join(', ')}`); // prettier-ignore
    for (const { material, thickness, sheets, waste } of pack.sheets)
      on.out(
        `  Plate ${quantityText(thickness, 'mm')} ${material}: ${sheets.length} ${sheets.length === 1 ? 'sheet' : 'sheets'}, ${percent(waste)} waste`,
      );
    for (const { section, material, bars, waste } of pack.bars)
      on.out(
        `  Tube ${section} ${material}: ${bars.length} ${bars.length === 1 ? 'bar' : 'bars'}, ${percent(waste)} waste`,
      );
    on.out(`Written into ${values.out}: ${files.map(({ name }) => name).join(', ')}`);
    return exit.passes;
  },
};

function sheetOf(text: string | undefined): Stock['sheet'] {
  if (text === undefined) return { width: 3, height: 1.5 };
  const match = /^(.+?[^\d\s.,])\s*[x×]\s*(\d.*)$/.exec(text);
  if (!match)
    throw refusal({
      what: `“${text}” is no size of a sheet`,
      where: { option: '--stock' },
      mend: 'Write two lengths with an x between them, each with its unit: 3000mmx1500mm.',
    });
  const [a, b] = [positiveOption('--stock', match[1]!, 'length'), positiveOption('--stock', match[2]!, 'length')];
  return { width: Math.max(a, b), height: Math.min(a, b) };
}
