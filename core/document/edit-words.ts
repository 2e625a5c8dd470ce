import type { Edit } from './edit.ts';
import { fieldWords } from './field-words.ts';
import { shown } from './shown.ts';

/** An edit in words, for undo and the list of changes: "thickness of design bolted: “8 mm”". */
export function editWords(edit: Edit): string {
  switch (edit.kind) {
    case 'setField':
      return `${fieldWords(edit.path.join('.'))}: ${shown(edit.value)}${inOption(edit.option)}`;
    case 'clearField':
      return `${fieldWords(edit.path.join('.'))}: taken out${inOption(edit.option)}`;
    case 'coverBays': {
      const [first] = edit.bays;
      const bays = edit.bays.length === 1 ? `bay ${first}` : `${edit.bays.length} bays`;
      return `${edit.design === null ? `${bays} opened` : `${bays} closed with “${edit.design}”`}${inOption(edit.option)}`;
    }
    case 'renameDesign':
      return `panel design “${edit.from}” renamed “${edit.to}”`;
    case 'addOption':
      return `option “${edit.option.title}” added`;
    case 'describeOption':
      return `option “${edit.title}” described`;
    case 'removeOption':
      return `option “${edit.id}” removed`;
    case 'chooseOption':
      return edit.id === null ? 'the document as it stands chosen' : `option “${edit.id}” chosen`;
    case 'replaceDocument':
      return 'the whole document replaced';
  }
}

const inOption = (option: string | null): string => (option === null ? '' : ` (option “${option}”)`);
