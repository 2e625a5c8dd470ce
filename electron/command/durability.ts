import { resolve } from 'node:path';
import { appraise } from '../../core/appraise.ts';
import { durabilityReport } from '../../core/checks/durability-report.ts';
import { placeWords } from '../../core/place-words.ts';
import { printIn } from '../../core/print-in.ts';
import { significant } from '../../core/quantity/format-quantity.ts';
import { programVersion } from '../../core/result.ts';
import { openDocument } from '../host/open-document.ts';
import { chosenOption } from './chosen-option.ts';
import { optionsOf } from './options-of.ts';
import { exit } from './terminal.ts';
import type { Verb } from './verbs.ts';

const usage = 'durability FILE [--option ID] [--json]';

/** Corrosion, protection, unlike metals and the plan of what to look at. */
export const durabilityVerb: Verb = {
  usage,
  purpose: 'corrosion and anodes over the life, unlike metals that touch, and what to look at when',
  help: [
    '  --option ID  the option; by default the chosen one; "base" is the document as it stands',
    '  --json       one object, SI (schema stillplate-durability/1): anode.mass and anode.count are what is wanted',
    '',
    'Ends with 1 where the anodes given do not suffice, or what they need cannot be judged although some are described.',
    '',
    'Example: stillplate durability samples/small.stillplate.json',
  ].join('\n'),
  run: async (args, on) => {
    const { values, file } = optionsOf(args, { option: { type: 'string' }, json: { type: 'boolean' } }, usage, 1);
    const { raw, document } = await openDocument(resolve(on.folder, file));
    const { model, rows, optionTitle } = appraise(raw, document, chosenOption(document, values.option));
    const { area, anodes, burden, loss, life, pairs, plan, findings } = durabilityReport(model, rows);
    const judged = rows.filter(
      ({ limitState, verdict }) => limitState === 'durability' && verdict !== 'not applicable',
    );
    const quantities = {
      ...(area
        ? {
            'protected.coated': { value: area.coated, unit: 'm^2', title: 'Coated metal joined to the anodes' },
            'protected.bare': { value: area.bare, unit: 'm^2', title: 'Bare metal joined to the anodes' },
          }
        : {}),
      ...(anodes
        ? {
            'anode.mass': { value: anodes.mass, unit: 'kg', title: 'Alloy that the life uses up' },
            'anode.count': { value: anodes.count, unit: '1', title: 'Anodes wanted, by mass and by current' },
            'anode.given': { value: anodes.given, unit: '1', title: 'Anodes given' },
          }
        : {}),
      ...(burden
        ? {
            'anode.weightInWater': { value: burden.weightInWater, unit: 'N', title: 'Weight of their alloy in water' },
            'anode.dragArea': {
              value: burden.dragArea,
              unit: 'm^2',
              title: 'Drag coefficient times area of the anodes in heave',
            },
            ...(burden.drag === null
              ? {}
              : {
                  'anode.drag': {
                    value: burden.drag,
                    unit: 'N',
                    title: 'Their drag at the greatest speed of the stated motion',
                  },
                }),
          }
        : {}),
      'corrosion.tabled': { value: loss.tabled, unit: 'mm', title: 'Loss of a face of bare steel in the life' },
    };
    if (values.json)
      on.out(JSON.stringify({ schema: 'stillplate-durability/1', programVersion, option: optionTitle, life, quantities, pairs, plan, findings: findings.map(({ id, place, text }) => ({ id, place, text })) }, null, 2)); // prettier-ignore
    else {
      const print = printIn(model.document.units);
      on.out(`${model.document.project.name}. ${optionTitle}. Life ${significant(life, 3)} years.`);
      for (const [id, { value, unit, title }] of Object.entries(quantities))
        on.out(`${id.padEnd(18)} ${print.quantity(value, unit).padStart(12)}   ${title}`);
      for (const { where, difference, words } of pairs)
        on.out(`${where}: ${significant(difference, 2)} V apart. ${words}`);
      for (const { what, places, first, how } of plan)
        on.out(`${first === null ? 'each lift' : `${significant(first, 2)} years`.padEnd(9)}  ${what}${places.length > 0 ? ` (${places.map((place) => placeWords(model, place)).join(', ')})` : ''}: ${how}`); // prettier-ignore
      for (const { text, mend } of findings) on.out(`${text} ${mend}`);
    }
    return judged.every(({ verdict }) => verdict === 'passes') ? exit.passes : exit.failsOrUnjudged;
  },
};
