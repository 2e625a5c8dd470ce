import { describe, expect, it } from 'vitest';
import { inputChanges, resultChanges } from '../../core/issue/changes-between.ts';
import { noteLife, recorded } from '../../core/issue/note-life.ts';
import { emptyRegister, readRegister, type IssueEvent, type Register } from '../../core/issue/register.ts';

const author = { role: 'author', name: 'First' } as const;
const checker = { role: 'checker', name: 'Second' } as const;
const engineer = { role: 'licensed engineer', name: 'Third' } as const;
const date = '2026-03-14';

const forCheck = (revision: string, verdict: 'passes' | 'fails' | 'not judged' = 'passes', hash = revision): IssueEvent => ({
  kind: 'issued for check', date, by: author, revision, option: null, documentHash: hash, programVersion: '0.1.0',
  document: { project: { revision } },
  result: { quantities: {}, limitStates: [{ name: 'Fatigue', verdict, governing: null, utilisation: null }], findings: [] },
}); // prettier-ignore
const checked: IssueEvent = { kind: 'checked', date, by: checker };
const issued: IssueEvent = { kind: 'issued', date, by: engineer };
const after = (...events: IssueEvent[]): Register => events.reduce(recorded, emptyRegister);
const states = (...events: IssueEvent[]) => noteLife(after(...events)).map(({ state }) => state);

describe('the life of a note', () => {
  it('goes from check to checked to issued; the next one supersedes it only when it is issued itself', () => {
    const a = [forCheck('A'), checked, issued];
    expect(states(forCheck('A'))).toEqual(['issued for check']);
    expect(states(...a)).toEqual(['issued']);
    expect(states(...a, forCheck('B'))).toEqual(['issued', 'issued for check']);
    expect(states(...a, forCheck('B'), checked, issued)).toEqual(['superseded', 'issued']);
    expect(states(...a, { kind: 'withdrawn', date, by: engineer, reason: 'site moved' })).toEqual(['withdrawn']);
  });
  it('takes no step before its turn, and none in another’s role', () => {
    expect(() => after(checked)).toThrow(/Nothing was issued for check/);
    expect(() => after(forCheck('A'), issued)).toThrow(/“issued” follows “checked”/);
    expect(() => after(forCheck('A'), { ...checked, by: author })).toThrow(/The author cannot do this/);
    expect(() => after(forCheck('A'), { ...checked, by: { ...checker, name: author.name } })).toThrow(
      /is the author of/,
    );
    expect(() => after(forCheck('A'), { ...checked, date: '2026-03-13' })).toThrow(/is before Revision A/);
    expect(() => after(forCheck('A'), { ...checked, by: { ...checker, name: 'x'.repeat(121) } })).toThrow(
      /121 characters/,
    );
  });
  it('edits nothing in a revision that was issued: another content needs another revision', () => {
    expect(() => after(forCheck('A'), forCheck('A', 'passes', 'other'))).toThrow(/with another content.*new revision/);
    expect(() => after(forCheck('A'), forCheck('A'))).toThrow(/was issued for check already/);
  });
  it('is not issued while a limit state fails, or is not judged and not accepted by its name', () => {
    expect(() => after(forCheck('A', 'fails'), checked, issued)).toThrow(/Fatigue fails/);
    const open = [forCheck('A', 'not judged'), checked];
    expect(() => after(...open, issued)).toThrow(/not judged are Fatigue/);
    const accepted = (limitState: string): IssueEvent => ({ kind: 'accepted', date, by: engineer, limitState, reason: 'own shell model' }); // prettier-ignore
    expect(() => after(...open, accepted('Buckling'))).toThrow(/no limit state of Revision A.*Name one of: Fatigue/);
    expect(states(...open, accepted('Fatigue'), issued)).toEqual(['issued']);
    expect(() => after(forCheck('A', 'fails'), checked, accepted('Fatigue'))).toThrow(/not judged/);
  });
  it('a required change without an answer stops checking, of the next revision too', () => {
    const asked: IssueEvent = { kind: 'comment', date, by: checker, text: 'State the amplitude', required: true };
    const answer: IssueEvent = { kind: 'answer', date, by: author, to: 1, text: 'It is stated now' };
    expect(() => after(forCheck('A'), asked, checked)).toThrow(/comment 1/);
    expect(() => after(forCheck('A'), asked, forCheck('B'), checked)).toThrow(/comment 1/);
    expect(() => after(forCheck('A'), asked, { ...answer, to: 2 })).toThrow(/There is no comment 2/);
    const life = noteLife(after(forCheck('A'), asked, forCheck('B'), answer, checked));
    expect(life.map(({ state, comments }) => [state, comments.length])).toEqual([['issued for check', 1], ['checked', 0]]); // prettier-ignore
  });
});

describe('the register', () => {
  it('comes back from its text, and names the first entry that was changed, lost or put in', () => {
    const register = after(forCheck('A'), checked, issued);
    const text = JSON.stringify(register);
    expect(readRegister(text)).toEqual(register);
    expect(() => readRegister(text.replace('Second', 'Fourth'))).toThrow(/Entry 2 of the register/);
    const lost = { ...register, events: register.events.slice(1) };
    expect(() => readRegister(JSON.stringify(lost))).toThrow(/Entry 1 of the register/);
    expect(() => readRegister('{"schema":"stillplate-register/1","events":[],"events":[]}')).toThrow(/events/);
    expect(() => readRegister('{"schema":"x"}')).toThrow(/schema/);
  });
});

describe('what changed', () => {
  it('names each field with both values, lists of one length by their place, and the window’s state never', () => {
    expect(
      inputChanges(
        { view: { zoom: 1 }, water: { depth: '40 m' }, list: [{ a: 1 }, { a: 2 }], gone: true },
        { view: { zoom: 2 }, water: { depth: '45 m' }, list: [{ a: 1 }, { a: 3 }] },
      ),
    ).toEqual([
      { what: 'water, depth', was: '“40 m”', is: '“45 m”' },
      { what: 'list, 2, a', was: '2', is: '3' },
      { what: 'gone', was: 'true', is: 'nothing' },
    ]);
  });
  it('names verdicts, quantities to six figures, and findings that came and went', () => {
    const result = (value: number, verdict: 'passes' | 'fails', findings: string[]) => ({
      quantities: { 'mass.air': { title: 'Mass in air', unit: 'kg', value } },
      limitStates: [{ name: 'Fatigue', verdict, governing: 'Weld at A1', utilisation: value / 1000 }],
      findings,
    });
    expect(resultChanges(result(900, 'passes', ['old']), result(900.0000001, 'passes', ['old']))).toEqual([]);
    expect(resultChanges(result(900, 'passes', ['old']), result(1100, 'fails', ['new'])).map(({ was, is }) => [was, is])).toEqual([
      ['passes, highest use 0.9000', 'fails, highest use 1.100, Weld at A1'],
      ['900.000 kg', '1100.00 kg'],
      ['none', 'new'],
      ['old', 'none'],
    ]); // prettier-ignore
  });
});
