import { seaResultField, type KeptSeaResult, type SeaDeployment } from '../document/sea-tests-field.ts';
import { keptSeaResult } from '../motion/kept-sea-result.ts';
import { deploymentRecording, reducedDeployment } from '../motion/reduced-deployment.ts';
import { seaKey } from '../motion/sea-key.ts';
import { firstLook } from '../note/first-look.ts';
import { seaComparison } from '../note/sea-comparison.ts';
import { seaBlocks, seaCautions } from '../note/sea-section.ts';
import { printIn } from '../print-in.ts';
import type { Table } from '../record/read-table.ts';
import { programVersion } from '../result.ts';
import type { Json } from '../document/edit.ts';
import type { RecordCalls } from './record-messages.ts';

type SeaCall = 'lookSea' | 'reduceSea' | 'compareSea';
type Calls = { readonly [C in SeaCall]: (takes: RecordCalls[C]['takes']) => RecordCalls[C]['gives'] };

interface Kept {
  readonly raw: { readonly [key: string]: Json };
  readonly read: KeptSeaResult;
}

/** Deployments looked at, reduced and compared, from tables that are held elsewhere by their hash. */
export function seaService(tableOf: (record: SeaDeployment['record']) => Table): Calls {
  const known = new Map<string, Kept>();

  /** Reduced once for each state of its settings. */
  function reduced(deployment: SeaDeployment): Kept {
    const key = seaKey(deployment);
    const before = known.get(key);
    if (before) return before;
    const { record, second } = deployment;
    const made = reducedDeployment(tableOf(record), second ? tableOf(second.record) : null, deployment);
    const raw = keptSeaResult(deployment, made, programVersion);
    const fresh = { raw, read: seaResultField.parse(raw) };
    known.set(key, fresh);
    for (const old of known.keys()) if (known.size > 3) known.delete(old);
    return fresh;
  }

  return {
    lookSea: ({ deployment, units }) => {
      const made = deployment.second ? [deployment.record, deployment.second.record] : [deployment.record];
      const tables = made.map(tableOf);
      return deploymentRecording(tables[0]!, tables[1] ?? null, deployment).recordings.map((one, i) => {
        const { title, blocks } = firstLook(tables[i]!, one, printIn(units));
        return { title: `${title}: ${made[i]!.name}`, blocks };
      });
    },
    reduceSea: ({ deployment, units }) => {
      const { raw, read } = reduced(deployment);
      const blocks = [...seaBlocks(read, deployment.title, printIn(units)), { kind: 'list', tone: 'caution', items: seaCautions } as const]; // prettier-ignore
      return { section: { title: 'How still the plate was', blocks }, accepted: raw };
    },
    compareSea: ({ deployment, other, units }) => {
      const [a, b] = [deployment, other].map((one) => ({ title: one.title, result: reduced(one).read }));
      return seaComparison(a!, b!, printIn(units));
    },
  };
}
