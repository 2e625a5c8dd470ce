import type { SeaDeployment } from '../document/sea-tests-field.ts';
import type { Finding } from '../finding.ts';
import { significant } from '../quantity/format-quantity.ts';
import type { Table } from '../record/read-table.ts';
import { recordFindings } from '../tank/tank-findings.ts';
import type { StatedClock } from './align-records.ts';
import { clockFindings, clockWords } from './clock-findings.ts';
import { seaChannels, type SeaRecording } from './sea-channels.ts';
import { seaMotion, type SeaResult } from './sea-record.ts';
import { seaSetupOf } from './sea-setup-of.ts';
import { wayWords } from './sea-quantities.ts';

/** A deployment from its files to how still the plate was. */
export interface ReducedDeployment {
  readonly recording: SeaRecording;
  readonly result: SeaResult;
  /** What was done to the readings, in words. */
  readonly steps: readonly string[];
  readonly findings: readonly Finding[];
}

/** Readings of a deployment's files under its settings, on one clock. */
export function deploymentRecording(first: Table, second: Table | null, deployment: SeaDeployment): SeaRecording {
  const other = deployment.second && second ? { table: second, reading: deployment.second.reading } : null;
  return seaChannels({ table: first, reading: deployment.reading }, other, statedClock(deployment), seaSetupOf(deployment)); // prettier-ignore
}

const statedClock = ({ second }: SeaDeployment): StatedClock => ({ late: second?.late?.si ?? null, lateAtEnd: second?.lateAtEnd?.si ?? null }); // prettier-ignore

/** Reduces a deployment as its settings say. `second`: the other logger's table where the deployment names one. */
export function reducedDeployment(first: Table, second: Table | null, deployment: SeaDeployment): ReducedDeployment {
  const setup = seaSetupOf(deployment);
  const recording = deploymentRecording(first, second, deployment);
  const result = seaMotion(recording.channels, setup);
  return {
    recording,
    result,
    steps: stepsOf(recording, result, setup.highPass),
    findings: [
      ...recording.recordings.flatMap(recordFindings).map((finding) => (finding.id === 'gaps' ? { ...finding, mend: 'Nothing, if few: the longest stretch without a wide one is taken, those up to five steps are bridged straight.' } : finding)), // prettier-ignore
      ...clockFindings(recording, setup),
      ...result.findings,
    ],
  };
}

function stepsOf({ channels, from, to, alignment }: SeaRecording, { by }: SeaResult, highPass: number): string[] {
  return [
    `Used: ${significant(from, 4)} s to ${significant(to, 4)} s after the first reading, the longest stretch without a wide gap, at ${significant(1 / channels.dt, 4)} readings a second, straight between readings; of it, ${significant(highPass, 3)} s at either end are left out.`,
    ...(alignment ? clockWords(alignment) : []),
    `The plate: ${wayWords[by]}. High pass of ${significant(highPass, 3)} s: nothing under 0.8 of its frequency, all over 1.2 of it, and no phase.`,
  ];
}
