import { numberOf, type DecimalSign } from './number-text.ts';

/** How a column tells time: a number in a unit, a clock (14:05:09.3), or date and time (ISO 8601). */
export type TimeForm = 'number' | 'clock' | 'date and time';

const clock = /^(\d{1,2}):(\d{2}):(\d{2}(?:[.,]\d+)?)$/;
const dateTime = /^(\d{4})-(\d{2})-(\d{2})[T ](\d{2}):(\d{2})(?::(\d{2}(?:[.,]\d+)?))?(Z|[+-]\d{2}:?\d{2})?$/;

/** The form of a cell that tells time, or undefined. */
export function timeFormOf(cell: string, sign: DecimalSign): TimeForm | undefined {
  const text = cell.trim();
  if (numberOf(text, sign) !== undefined) return 'number';
  if (clock.test(text)) return 'clock';
  return dateTime.test(text) ? 'date and time' : undefined;
}

/**
 * Seconds that a cell tells in its form: of a clock since midnight, of a date since 1970 (a time without a zone is taken
 * as written). Undefined where the cell is no time of that form.
 */
export function secondsOf(cell: string, form: TimeForm, sign: DecimalSign): number | undefined {
  const text = cell.trim();
  if (form === 'number') return numberOf(text, sign);
  const second = (part: string | undefined): number => Number((part ?? '0').replace(',', '.'));
  if (form === 'clock') {
    const match = clock.exec(text);
    if (!match) return undefined;
    const [hours, minutes, seconds] = [Number(match[1]), Number(match[2]), second(match[3])];
    return hours < 24 && minutes < 60 && seconds < 60 ? 3600 * hours + 60 * minutes + seconds : undefined;
  }
  const match = dateTime.exec(text);
  if (!match) return undefined;
  const [year, month, day, hours, minutes] = match.slice(1, 6).map(Number) as [number, number, number, number, number];
  const exists = month >= 1 && month <= 12 && day >= 1 && day <= daysIn(year, month);
  const seconds = second(match[6]);
  if (!exists || hours > 23 || minutes > 59 || seconds >= 60) return undefined;
  return 86_400 * dayNumber(year, month, day) + 3600 * hours + 60 * minutes + seconds - zone(match[7]);
}

const isLeap = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
const daysIn = (year: number, month: number): number =>
  month === 2 ? (isLeap(year) ? 29 : 28) : [4, 6, 9, 11].includes(month) ? 30 : 31;

/** Days since 1 January 1970 in the Gregorian calendar. */
function dayNumber(year: number, month: number, day: number): number {
  const before = year - 1;
  let days = 365 * before + Math.floor(before / 4) - Math.floor(before / 100) + Math.floor(before / 400) + day - 1;
  for (let m = 1; m < month; m++) days += daysIn(year, m);
  return days - 719_162;
}

function zone(text: string | undefined): number {
  if (text === undefined || text === 'Z') return 0;
  const [, sign, hours, minutes] = /^([+-])(\d{2}):?(\d{2})$/.exec(text)!;
  return (sign === '-' ? -1 : 1) * (3600 * Number(hours) + 60 * Number(minutes));
}
