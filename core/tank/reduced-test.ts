import type { TankTest } from '../document/tests-field.ts';
import type { Finding } from '../finding.ts';
import { significant } from '../quantity/format-quantity.ts';
import type { Table } from '../record/read-table.ts';
import type { Recording } from '../record/record.ts';
import { conditioned } from './conditioned.ts';
import { identify, type TankResult } from './identify.ts';
import { recordOfTable } from './tank-record.ts';
import { recordFindings } from './tank-findings.ts';
import { tankEffects, tankEffectWords } from './tank-effects.ts';
import type { TankSetup } from './tank-setup.ts';
import { tankSetupOf } from './tank-setup-of.ts';

/** A test from its file to its two numbers. */
export interface ReducedTest {
  readonly recording: Recording;
  readonly result: TankResult;
  /** What was done to the readings, in words: before the fit, and by it. */
  readonly steps: readonly string[];
  readonly findings: readonly Finding[];
}

/** Readings of a test's file under its settings. */
export function testRecording(table: Table, { reading }: Pick<TankTest, 'reading'>): Recording {
  const { time, travel, force, timeUnit, travelUnit, forceUnit } = reading;
  const given = <T extends object>(all: T) =>
    Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined)) as {
      [K in keyof T]?: NonNullable<T[K]>;
    };
  return recordOfTable(table, given({ time, travel, force }), given({ time: timeUnit, travel: travelUnit, force: forceUnit })); // prettier-ignore
}

/** Reduces a test as its settings say. Refuses what cannot be read or told apart. */
export function reducedTest(table: Table, test: TankTest): ReducedTest {
  const recording = testRecording(table, test);
  const { time, travel, force, steps } = conditioned(recording, test);
  const setup = tankSetupOf(test);
  const result = identify(time, travel, force, setup);
  const { tankWidth, tankLength, plateDepth, aboveFloor } = test.setup;
  const around = { plateWidth: setup.width, tankWidth: tankWidth?.si ?? null, tankLength: tankLength?.si ?? null, plateDepth: plateDepth?.si ?? null, aboveFloor: aboveFloor?.si ?? null }; // prettier-ignore
  const tank = tankEffectWords(tankEffects(around, setup, result.addedMass.value));
  return {
    recording,
    result,
    steps: [...steps, ...stepsOfFit(result, time.length, setup), ...tank.steps],
    findings: [...recordFindings(recording), ...result.findings, ...tank.findings],
  };
}

function stepsOfFit(
  { runs, used, drift }: TankResult,
  readings: number,
  { harmonics, stiffness }: TankSetup,
): string[] {
  const cycles = runs.reduce((sum, run) => sum + run.cycles, 0);
  const shortest = Math.min(...runs.map(({ period }) => period));
  return [
    `Whole cycles: ${cycles} in ${runs.length === 1 ? 'one run' : `${runs.length} runs`} of three or more alike; ${used} of ${readings} readings are in them and sound.`,
    `Speed and acceleration are those of ${harmonics} harmonics fitted to the travel of each run: nothing above ${significant(harmonics / shortest, 3)} Hz goes in. Readings are taken at their own times, none is made up.`,
    ...(stiffness === null ? ['Travel is taken as that of the plate: no stiffness of line, crane and frame is stated. A ram’s travel is not, where they stretch.'] : [`The stretch of line and crane, pull over ${significant(stiffness / 1000, 3)} kN/m, is taken off the travel.`]), // prettier-ignore
    `The travel’s drift is taken off with the fit: up to ${significant(1000 * drift, 2)} mm/s.`,
  ];
}
