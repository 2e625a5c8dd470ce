import { useEffect, useState } from 'react';
import type { RecordCall, RecordCalls, RecordHead } from '../../core/engine/record-messages.ts';
import type { TankTest } from '../../core/document/tests-field.ts';
import { valueOf } from '../../core/host/answer.ts';
import { Refusal, type RefusalText } from '../../core/refusal.ts';
import { askRecords, holdRecord } from '../engine/record-client.ts';
import { useSession } from './session-context.ts';
import { useWorkbench } from './workbench.ts';

/** What was asked, while it is awaited (null), and why it cannot be had. `of`: the key that it was asked with. */
export interface Awaited<T> {
  readonly value: T | null;
  readonly refusal: RefusalText | null;
}

const waiting = { value: null, refusal: null } as const;

/** Asks something whenever `key` changes; an answer that comes after another question is dropped. No question while `key` is null. */
export function useAwaited<T>(key: string | null, ask: () => Promise<T>): Awaited<T> {
  const [state, setState] = useState<Awaited<T> & { readonly key: string | null }>({ ...waiting, key: null });
  useEffect(() => {
    if (key === null) return;
    let current = true;
    ask().then(
      (value) => current && setState({ key, value, refusal: null }),
      (error: unknown) => {
        if (!(error instanceof Refusal)) throw error;
        if (current) setState({ key, value: null, refusal: error });
      },
    );
    return () => {
      current = false;
    };
    // `key` says all that the question depends on
  }, [key]);
  return state.key === key ? state : waiting;
}

/** Columns of a test's record, which is brought from the store to the worker where it is not there yet. */
export function useRecordHead({ record: { hash } }: Pick<TankTest, 'record'>): Awaited<RecordHead> {
  const { host } = useSession();
  return useAwaited(hash, () => holdRecord(hash, async () => valueOf(await host.readRecord({ hash })).bytes));
}

/** An answer about a test, asked anew whenever its record or settings change. `ready`: the worker holds what it needs. */
export function useOfTest<C extends RecordCall>(
  call: C,
  test: TankTest | null,
  ready: boolean,
  more: object = {},
): Awaited<RecordCalls[C]['gives']> {
  const units = useWorkbench(({ document }) => document?.read?.units ?? 'metric');
  const { result: _result, ...asked } = test ?? ({} as TankTest);
  const key = test && ready ? JSON.stringify([call, units, asked, more]) : null;
  return useAwaited(key, () => askRecords(call, { test: test!, units, ...more } as unknown as RecordCalls[C]['takes']));
}
