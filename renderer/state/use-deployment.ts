import type { SeaDeployment } from '../../core/document/sea-tests-field.ts';
import type { RecordCall, RecordCalls } from '../../core/engine/record-messages.ts';
import { askRecords } from '../engine/record-client.ts';
import { useAwaited, useRecordHead, type Awaited } from './use-record.ts';
import { useWorkbench } from './workbench.ts';

type SeaCall = Extract<RecordCall, 'lookSea' | 'reduceSea' | 'compareSea'>;

/** An answer about a deployment, asked anew whenever its records or settings change. `ready`: the worker holds what it needs. */
export function useOfDeployment<C extends SeaCall>(
  call: C,
  deployment: SeaDeployment,
  ready: boolean,
  more: object = {},
): Awaited<RecordCalls[C]['gives']> {
  const units = useWorkbench(({ document }) => document?.read?.units ?? 'metric');
  const { result: _result, ...asked } = deployment;
  const key = ready ? JSON.stringify([call, units, asked, more]) : null;
  return useAwaited(key, () => askRecords(call, { deployment: asked, units, ...more } as unknown as RecordCalls[C]['takes'])); // prettier-ignore
}

/** Heads of a deployment's one or two files, brought from the store to the worker. */
export function useFilesOf({ record, second }: Pick<SeaDeployment, 'record' | 'second'>) {
  const first = useRecordHead({ record });
  const other = useRecordHead({ record: second?.record ?? record });
  return {
    first,
    second: second ? other : null,
    refusal: first.refusal ?? other.refusal,
    ready: first.value !== null && other.value !== null,
  };
}
