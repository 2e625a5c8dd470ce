import { aimIds, type AimId } from '../../../core/options/search/aims.ts';
import { ChoiceField } from '../../parts/ChoiceField.tsx';
import { FieldFrame } from '../../parts/FieldFrame.tsx';
import { FieldGroup } from '../../parts/FieldGroup.tsx';
import { fieldTexts } from '../../parts/field-texts.ts';
import { ListField } from '../../parts/ListField.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { QuantityField } from '../../parts/QuantityField.tsx';
import { SomeField } from '../../parts/SomeField.tsx';
import { SwitchField } from '../../parts/SwitchField.tsx';
import { useField } from '../../state/use-field.ts';
import { texts } from '../../texts.ts';

const t = texts.search;
const choicesOf = (words: Readonly<Record<string, string>>) =>
  Object.entries(words).map(([value, title]) => ({ value, title }));
const at = (name: string) => ['search', name] as const;

/** Fields of what a search may vary, what it aims at and what it has to keep. */
export function WhatMayVary() {
  return (
    <>
      <FieldGroup title={t.varies}>
        <ListField path={at('thickness')} {...fieldTexts('searchThickness')} />
        <ListField path={at('material')} {...fieldTexts('searchMaterial')} />
        <SomeField path={at('side')} {...fieldTexts('searchSide')} choices={choicesOf(t.sides)} />
        <ListField path={at('overlap')} {...fieldTexts('searchOverlap')} />
        <SomeField path={at('kind')} {...fieldTexts('searchKind')} choices={choicesOf(t.kinds)} />
        <ListField path={at('bolt')} {...fieldTexts('searchBolt')} />
        <ListField path={at('pitch')} {...fieldTexts('searchPitch')} />
        <ListField path={at('throat')} {...fieldTexts('searchThroat')} />
        <ChoiceField path={at('zones')} {...fieldTexts('searchZones')} choices={choicesOf(t.zones)} none={t.zonesAll} />
        <SwitchField path={at('open')} {...fieldTexts('searchOpen')} />
      </FieldGroup>
      <FieldGroup title={t.wanted}>
        <AimFields />
      </FieldGroup>
      <FieldGroup title={t.kept}>
        <QuantityField path={at('lift')} kind="mass" {...fieldTexts('searchLift')} optional />
        <QuantityField path={at('panelByHand')} kind="mass" {...fieldTexts('searchPanelByHand')} optional />
        <NumberField path={at('openLeast')} {...fieldTexts('searchOpenLeast')} optional />
        <NumberField path={at('openMost')} {...fieldTexts('searchOpenMost')} optional />
        <SomeField path={at('aside')} {...fieldTexts('searchAside')} choices={choicesOf(t.limitStates)} />
        <SwitchField path={at('judged')} {...fieldTexts('searchJudged')} />
      </FieldGroup>
    </>
  );
}

/** What leads, and what it is weighed against. Further aims that a document names stay. */
function AimFields() {
  const field = useField(at('aims'));
  const held = Array.isArray(field.raw) ? (field.raw as readonly AimId[]) : (['mass', 'use'] as const);
  const put = (place: number, aim: string) => {
    const rest = held.filter((other, n) => n !== place && other !== aim);
    field.set(aim === '' ? rest : [...rest.slice(0, place), aim, ...rest.slice(place)]);
  };
  return (
    <>
      {[0, 1].map((place) => (
        <FieldFrame
          key={place}
          {...fieldTexts(place === 0 ? 'searchFirstAim' : 'searchSecondAim')}
          fault={place === 0 ? field.fault : null}
        >
          {(frame) => (
            <select {...frame} value={held[place] ?? ''} onChange={({ target }) => put(place, target.value)}>
              {place > 0 && <option value="">{t.noAim}</option>}
              {aimIds.map((aim) => (
                <option key={aim} value={aim}>
                  {t.aims[aim]}
                </option>
              ))}
            </select>
          )}
        </FieldFrame>
      ))}
    </>
  );
}
