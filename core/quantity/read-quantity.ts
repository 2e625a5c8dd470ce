import { refusal, type Refusal } from '../refusal.ts';
import { kinds, type Kind, type Quantity } from './kinds.ts';
import { plainText } from './plain-text.ts';
import { readUnitText, sameDimension, unitReading } from './units.ts';

/**
 * Reads a quantity as an engineer types it: "10 mm", "3/8 in", "1 1/2 in", "5 ft 3 in", 5'-3", "10,5 mm", "300 lbf", "1.2 t",
 * and as this program prints it ("12 350 N", "1.200·10⁷ N", "−3 mm").
 * Gives SI and keeps the text. Refuses a missing, unknown, ambiguous or wrong-kind unit, an ambiguous number
 * ("1,000") and a number that is not finite; the text is shown back.
 */
export function readQuantity(typed: string, kind: Kind): Quantity {
  const text = plainText(typed);
  const feet =
    kind === 'length'
      ? /^([-+]?)(\d[\d.,]*)\s*(?:ft|feet|foot|')(?:\s*|-)(\d.*?)\s*(?:inches|inch|in|")$/.exec(text)
      : null;
  if (!feet) return { si: readOne(text, kind, typed), typed: typed.trim() };
  const [, sign = '', whole = '', rest = ''] = feet;
  // The sign stands before both: -5 ft 3 in is 63 in below.
  const si = readOne(`${whole} ft`, kind, typed) + readOne(`${rest} in`, kind, typed);
  return { si: sign === '-' ? -si : si, typed: typed.trim() };
}

function readOne(text: string, kind: Kind, typed: string): number {
  const { word, example, unit: siUnit } = kinds[kind];
  const say = (what: string, mend: string): Refusal => refusal({ what: `“${typed}” ${what}`, mend });
  if (text === '') throw refusal({ what: 'The text is empty', mend: `Write ${word}: ${example}.` });
  const match = /^([-+]?[\d.,]+(?:[eE][-+]?\d+)?(?:(?:\s+|-)\d+\s*\/\s*\d+|\s*\/\s*\d+)?)\s*(.*)$/u.exec(text);
  if (!match) throw say('does not begin with a number', `Write ${word}: ${example}.`);
  const [, numberText = '', unitText = ''] = match;
  const value = readNumber(numberText, say);
  if (unitText === '') throw say(`has no unit, the field needs ${word}`, `Write ${word} with its unit: ${example}.`);
  const unit = readUnitText(unitText);
  if ('ambiguous' in unit) throw say(`can mean more than one thing`, `${unit.ambiguous}: ${unit.meanings}.`);
  if ('unknown' in unit)
    throw say(
      `has the unit “${unit.unknown}”, which is not known`,
      `${unit.near ? `Is ${unit.near} meant? ` : ''}Write ${word}: ${example}.`,
    );
  const reading = unitReading(unit.unit);
  const wanted = unitReading(siUnit);
  if (!sameDimension(reading.dimensions, wanted.dimensions)) {
    if (
      /\blbs?\b/.test(unitText) &&
      /\blbm\b/.test(unit.unit) &&
      sameDimension(unitReading(unit.unit.replace(/\blbm\b/g, 'lbf')).dimensions, wanted.dimensions)
    )
      throw say(
        `can mean two things: lb is read as a mass, the field needs ${word}`,
        'lb: a pound of force is lbf (4.448 N), a pound of mass is lbm (0.4536 kg): write lbf if a force is meant.',
      );
    throw say(`is ${kindWord(reading.dimensions)}, the field needs ${word}`, `Write ${word}: ${example}.`);
  }
  const si = value * reading.factor + reading.offset;
  if (!Number.isFinite(si)) throw say('is not a finite number', 'Write a smaller number.');
  if (si === 0 && value !== 0) throw say('is too near to zero to be kept', 'Write 0, or a larger number.');
  return si;
}

/** A number as typed: decimal point or comma, a fraction, a mixed fraction. Refuses “1,000”: it can be one or one thousand. */
function readNumber(text: string, say: (what: string, mend: string) => Refusal): number {
  const fraction = /^([-+]?)(?:(\d+)(?:\s+|-))?(\d+)\s*\/\s*(\d+)$/.exec(text);
  if (fraction) {
    const [, sign, whole, over, under] = fraction;
    if (Number(under) === 0) throw say('divides by zero', 'Write the fraction with a number under the line.');
    return (sign === '-' ? -1 : 1) * ((whole ? plainNumber(whole, say) : 0) + Number(over) / Number(under));
  }
  return plainNumber(text, say);
}

function plainNumber(text: string, say: (what: string, mend: string) => Refusal): number {
  const commas = text.split(',').length - 1;
  if (commas > 0 && (commas > 1 || text.includes('.') || /,\d{3}(?!\d)/.test(text)))
    throw say(
      'can be read two ways: the comma may part thousands or decimals',
      'Write 1000 for a thousand, or 1.000 (or 1,0) for one.',
    );
  const plain = text.replace(',', '.');
  if (!/^[-+]?(\d+\.?\d*|\.\d+)([eE][-+]?\d+)?$/.test(plain))
    throw say('is not a number', 'Write a number such as 10, 10.5 or 3/8.');
  const value = Number(plain);
  if (!Number.isFinite(value)) throw say('is not a finite number', 'Write a smaller number.');
  if (value === 0 && /[1-9]/.test(plain.replace(/[eE].*/, '')))
    throw say('is too near to zero to be kept', 'Write 0, or a larger number.');
  return value;
}

/** The word for what was given, for "is a mass, the field needs a length". */
function kindWord(dimensions: readonly number[]): string {
  const found = Object.values(kinds).find((kind) => sameDimension(unitReading(kind.unit).dimensions, dimensions));
  return found ? found.word : 'another kind of quantity';
}
