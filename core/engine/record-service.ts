import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { appraise } from '../appraise.ts';
import { readDocument } from '../document/read-document.ts';
import type { TankTest } from '../document/tests-field.ts';
import { planInWater } from '../geometry/plan-in-water.ts';
import { recordedField, recordedMotion } from '../hydrodynamics/recorded-motion.ts';
import { delaySection } from '../note/delay-section.ts';
import { firstLook } from '../note/first-look.ts';
import { motionSection } from '../note/motion-section.ts';
import { tankComparison } from '../note/tank-comparison.ts';
import { tankSection } from '../note/tank-section.ts';
import { tankTheory } from '../note/tank-theory.ts';
import { modelOfOption } from '../options/model-of-option.ts';
import { printIn } from '../print-in.ts';
import { readTable, type Table } from '../record/read-table.ts';
import { textOfRecord } from '../record/text-of-record.ts';
import { refusal, Refusal } from '../refusal.ts';
import { programVersion } from '../result.ts';
import { acceptedResult } from '../tank/accepted-result.ts';
import { delayWays } from '../tank/delay-ways.ts';
import { reducedTest, testRecording, type ReducedTest } from '../tank/reduced-test.ts';
import { tankSetupOf } from '../tank/tank-setup-of.ts';
import { testKey } from '../tank/test-key.ts';
import type { FromRecords, RecordCall, RecordCalls, ToRecords } from './record-messages.ts';
import { seaService } from './sea-service.ts';

type Calls = { readonly [C in RecordCall]: (takes: RecordCalls[C]['takes']) => RecordCalls[C]['gives'] };

/** Records that are held at once: two deployments of two files each to compare, and one that is looked at. */
const mostHeld = 5;

/** Reads and reduces records in a thread of its own: a million rows never hold the window or the engine of the checks. */
export function createRecordService(): Calls {
  const tables = new Map<string, Table>();
  const reductions = new Map<string, ReducedTest>();

  function tableOf(record: TankTest['record']): Table {
    const table = tables.get(record.hash);
    if (table) return table;
    throw refusal({
      what: `The record “${record.name}” is not open`,
      where: { record: record.hash },
      mend: 'Choose its file.',
    });
  }

  /** Reduced once for each state of its settings. */
  function reduced(test: TankTest): ReducedTest {
    const key = testKey(test);
    const known = reductions.get(key);
    if (known) return known;
    const fresh = reducedTest(tableOf(test.record), test);
    keepLast(reductions, key, fresh);
    return fresh;
  }

  return {
    ...seaService(tableOf),
    open: ({ bytes }) => {
      const hash = bytesToHex(sha256(bytes));
      const table = tables.get(hash) ?? readTable(textOfRecord(bytes));
      tables.delete(hash);
      keepLast(tables, hash, table);
      return { hash, columns: table.columns, rows: table.rows.length };
    },
    look: ({ test, units }) => {
      const table = tableOf(test.record);
      return firstLook(table, testRecording(table, test), printIn(units));
    },
    reduce: ({ test, units }) => {
      const made = reduced(test);
      return {
        section: tankSection(made, tankSetupOf(test), printIn(units)),
        accepted: acceptedResult(test, made, programVersion),
      };
    },
    delay: ({ test }) => {
      const air = test.delay?.air;
      const ways = delayWays(tableOf(test.record), air ? tableOf(air.record) : null, test);
      return { section: delaySection(ways), ways };
    },
    recorded: ({ record, source }) =>
      recordedField(recordedMotion(tableOf(record)), { ...record, layout: record.layout ?? '' }, source),
    motion: ({ raw, option, units }) => motionSection(modelOfOption(raw, readDocument(raw), option), printIn(units)),
    compare: ({ test, other, units }) =>
      tankComparison([test, reduced(test).result], [other, reduced(other).result], printIn(units)),
    predict: ({ test, raw, option, units }) => {
      const { model } = appraise(raw, readDocument(raw), option);
      const { result } = reduced(test);
      const runs = result.runs.map(({ amplitude, fit }) => ({
        amplitude,
        addedMass: fit.inertia,
        dragCoefficient: fit.dragCoefficient,
      }));
      return tankTheory(
        { ...result, runs },
        tankSetupOf(test),
        planInWater(model.geometry),
        test.setup.scale,
        printIn(units),
      );
    },
  };
}

function keepLast<T>(map: Map<string, T>, key: string, value: T): void {
  map.set(key, value);
  for (const old of map.keys()) if (map.size > mostHeld) map.delete(old);
}

/** The service behind messages: gives what hears them. */
export function serveRecords(post: (message: FromRecords) => void): (message: ToRecords) => void {
  const service = createRecordService();
  return ({ id, call, takes }) => {
    try {
      if (!Object.hasOwn(service, call)) throw new Error(`The record service has no call “${String(call)}”`);
      post({ id, gives: (service[call] as (takes: unknown) => unknown)(takes) });
    } catch (error) {
      if (error instanceof Refusal) post({ id, refusals: error.all });
      else post({ id, broken: error instanceof Error ? (error.stack ?? error.message) : String(error) });
    }
  };
}
