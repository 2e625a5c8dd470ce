import { describe, expect, it } from 'vitest';
import { appraise, type Appraisal } from '../../core/appraise.ts';
import { resultView } from '../../core/engine/result-view.ts';
import { checkNote } from '../../core/note/check-note.ts';
import { compare } from '../../core/options/compare.ts';
import { readDocument, readDocumentText } from '../../core/document/read-document.ts';
import { sampleText, type Json } from '../document/middle.ts';
import { plants } from './plants.ts';

/** The sample's chosen option with an error planted in its own copy, or without one. */
function planted(plant: (document: Json) => void = () => undefined, option?: string): Appraisal {
  const json = JSON.parse(sampleText) as Json;
  plant(json);
  const raw = readDocumentText(JSON.stringify(json));
  return appraise(raw, readDocument(raw), option ?? (json['chosen'] as string));
}

const plantOf = (finding: string) =>
  plants.find(({ toldBy }) => 'finding' in toldBy && toldBy.finding === finding)!.plant;

const found = ({ findings }: Appraisal) => findings.map(({ id, place }) => `${id} ${place}`);
const stateOf = ({ limitStates }: Appraisal, name: string) => limitStates.find((state) => state.name === name)!;

/** Errors that a licensed engineer would want to catch: the program says what, where and what it does. */
describe('an error planted in the sample', () => {
  it('none: nothing is found, and every limit state passes', () => {
    const whole = planted();
    expect(found(whole)).toEqual([]);
    expect(whole.limitStates.filter(({ verdict }) => verdict !== 'passes')).toEqual([]);
  });

  it('a range typed as an amplitude stands beside the history of the force', () => {
    const wrong = planted(plantOf('range-beside-amplitude'));
    expect(found(wrong)).toEqual(['range-beside-amplitude loads.service.force']);
    expect(wrong.findings[0]!.text).toContain('184.0 kN');
    expect(wrong.findings[0]!.text).toContain('0.50');
    // and the other way round
    const other = planted((d) => void (d['loads'].service.force = '23 kN'));
    expect(found(other)).toEqual(['range-beside-amplitude loads.service.force']);
  });

  it('a panel shifted off three of its tubes is named bay by bay', () => {
    const wrong = planted(plantOf('panel-does-not-bear'));
    const bare = wrong.findings.filter(({ id }) => id === 'panel-does-not-bear');
    expect(bare.map(({ place }) => place)).toContain('A1');
    expect(bare[0]!.text).toContain('four sides');
    expect(bare).toHaveLength(12);
  });

  it('40 ksi entered as 400 MPa is told beside the name of the plate', () => {
    const wrong = planted(plantOf('row-far-from-catalogue'));
    const row = wrong.findings.find(({ id }) => id === 'row-far-from-catalogue');
    expect(row).toMatchObject({ place: 'A40' });
    expect(row!.text).toMatch(/40 ksi|276/);
  });

  it('an upward load that a bridle cannot hold down fails by name, with every case that it makes void', () => {
    const wrong = planted(plantOf('line-slack'));
    expect(found(wrong).some((each) => each.startsWith('line-slack'))).toBe(true);
    const slack = wrong.rows.filter(({ id, verdict }) => id === 'suspension-slack' && verdict === 'fails');
    expect(slack.length).toBeGreaterThan(0);
    expect(wrong.limitStates.some(({ verdict }) => verdict === 'fails')).toBe(true);
  });

  it('an upward load on a bridle with a bolt row missing: the loss is named with the force up that no leg can hold, and judged', () => {
    const wrong = planted(plantOf('line-slack'));
    const slack = wrong.findings.find(({ id, place }) => id === 'line-slack' && place === 'service-up')!;
    expect(slack.text).toContain('goes slack at');
    expect(slack.text).toContain('So it does with one bolt row lost, ');
    const { situations } = wrong.model.loads;
    expect(situations.find(({ loadCase, direction }) => loadCase === 'lost bolt row' && direction === 'up')!.balance.by).toBe('own inertia'); // prettier-ignore
  });

  it('the same on top of the tubes, where the force up pulls: the other rows take the lost one’s part, and two rows fail', () => {
    const onTop = (support?: string) =>
      planted((d) => {
        plantOf('line-slack')(d);
        Object.assign(d['designs']['underside'], { side: 'topside' }, support && { support });
      });
    const rows = ({ rows: all }: Appraisal, of: string) => all.filter(({ id, direction, loadCase }) => id === 'bolt-tension' && direction === 'up' && loadCase === of); // prettier-ignore
    const four = onTop();
    const { loadFactor } = four.model.loads.situations.find(({ id }) => id === 'service-up')!;
    expect(rows(four, 'lost bolt row')[0]!.demand!).toBeGreaterThan(rows(four, 'service')[0]!.demand! / loadFactor);
    const lost = rows(onTop('main tubes'), 'lost bolt row');
    expect(lost.length).toBeGreaterThan(0);
    for (const { verdict, reason } of lost) {
      expect(verdict).toBe('fails');
      expect(reason).toContain('with one lost it turns about the other');
    }
  });

  it('curves in air on welds under water are refused: fatigue is not judged, and says why', () => {
    const wrong = planted((d) => void (d['fatigue'].environment = 'air'), 'top-5-welded');
    expect(stateOf(wrong, 'Fatigue').verdict).toBe('not judged');
    const ends = wrong.rows.filter(({ id }) => id.startsWith('fatigue-') && id.includes('weld'));
    expect(ends.length).toBeGreaterThan(0);
    for (const { verdict, reason } of ends.filter((row) => row.verdict !== 'not applicable')) {
      expect(verdict).toBe('cannot be judged');
      expect(reason).toContain('in air');
    }
  });

  it.each(plants)('$name stands on page one of the note and in the window', ({ plant, toldBy, place, effect }) => {
    const json = JSON.parse(sampleText) as Json;
    plant(json);
    const raw = readDocumentText(JSON.stringify(json));
    const comparison = compare(raw, readDocument(raw), null);
    const appraisal = comparison.appraisals.find(({ optionId }) => optionId === json['chosen'])!;
    const first = JSON.stringify(checkNote(raw, appraisal, comparison).sections[0]);
    expect(first).toContain(place);
    expect(first).toContain(effect);
    const view = resultView(appraisal, true);
    if ('finding' in toldBy) expect(view.findings.map(({ id }) => id)).toContain(toldBy.finding);
    else expect(view.limitStates.find(({ name }) => name === toldBy.limitState)!.verdict).toBe('not judged');
  });
});
