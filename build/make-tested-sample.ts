import { createHash } from 'node:crypto';
import { readFile, writeFile } from 'node:fs/promises';
import { testsField } from '../core/document/tests-field.ts';
import { keptSeaResult } from '../core/motion/kept-sea-result.ts';
import { reducedDeployment } from '../core/motion/reduced-deployment.ts';
import { readTable } from '../core/record/read-table.ts';
import { programVersion } from '../core/result.ts';
import { acceptedResult } from '../core/tank/accepted-result.ts';
import { reducedTest } from '../core/tank/reduced-test.ts';

/** Curves stand on one line each. */
const numbers = /\[\s+-?\d[\d.e\s,-]*\]/g;

const invented = 'invented for the demo';
const rates = {
  currency: 'crowns', source: invented, labourPerHour: 520, platePerKg: 24, cutPerMetre: 38, perHole: 21, perBolt: 46,
  weldPerMetre: 310, recoatPerMetre: 95, recoatPerHole: 12, minutesToFitBolt: 3, minutesToRemoveBolt: 4,
  minutesToWeldMetre: 22, minutesToCutMetre: 9, minutesToPlacePanel: 15, peopleOnDeck: 3, vesselPerHour: 9800, removals: 2,
}; // prettier-ignore
const spreads = [
  { input: 'force', low: -0.2, high: 0.3, source: invented },
  { input: 'thickness', low: -0.05, high: 0.05, source: invented },
  { input: 'yield', low: 0, high: 0.2, source: invented },
  { input: 'overlap', low: -0.15, high: 0.15, source: invented },
];

/** Writes samples/tested.stillplate.json: the middle sample's plate with a tank test of its model, accepted and used in the
 *  design, two deployments in the sea, rates of money and time, and how far inputs may be off. Records and settings are those of the scripts that made them. */
export async function makeTestedSample(): Promise<void> {
  const middle = JSON.parse(await readFile('samples/middle.stillplate.json', 'utf8')) as Record<string, unknown> & {
    readonly project: object;
    readonly hydrodynamics: object;
    readonly options: readonly { readonly id: string }[];
  };
  const tank = {
    id: 'model',
    title: 'Model of the plate at 1:4',
    record: await recordOf('tank-model.csv'),
    setup: { mass: '30.67 kg', volume: '0.0043 m^3', area: '0.954 m^2', density: '999 kg/m^3', waterInside: '0.0074 m^3', width: '0.748 m', delayBound: '3 ms', scale: 4, ...{ tankWidth: '4 m', tankLength: '30 m', plateDepth: '1.8 m', aboveFloor: '1.8 m' } }, // prettier-ignore
  };
  const sea = async (name: string, title: string) => ({
    id: name,
    title,
    record: await recordOf(`sea-${name}.csv`),
    second: { record: await recordOf(`sea-${name}-plate.csv`) },
    setup: { highPass: '25 s', accelerationNoise: '0.01 m/s^2', strokeNoise: '4 mm', forceNoise: '90 N', pressureNoise: '120 Pa', scaleError: 0.005, clock: '20 ms', density: '1027 kg/m^3', plateDepth: '34 m', waterDepth: '62 m', waveError: 0.05, limit: '0.5 m' }, // prettier-ignore
  });
  const raw = { tank: [tank], sea: [await sea('closed', 'Closed, October'), await sea('open', 'Open, May')] };
  const read = testsField.parse(raw);
  const table = async (name: string) => readTable(await readFile(`samples/${name}`, 'utf8'));
  const [test] = read.tank;
  const tests = {
    tank: [{ ...tank, result: acceptedResult(test!, reducedTest(await table(tank.record.name), test!), programVersion) }], // prettier-ignore
    sea: await Promise.all(
      read.sea.map(async (one, i) => {
        const made = reducedDeployment(await table(one.record.name), await table(one.second!.record.name), one);
        return { ...raw.sea[i], result: keptSeaResult(one, made, programVersion) };
      }),
    ),
  };
  const document = {
    ...middle,
    project: { ...middle.project, name: 'Harrow Deep buoy, as tested', number: 'HD-015' },
    options: middle.options.slice(0, 1),
    hydrodynamics: { ...middle.hydrodynamics, system: { stiffness: '4 kN/m', damping: '5 kN*s/m', link: 'line', line: { axialStiffness: '1.9 MN', length: '32 m', source: 'invented for the demo' }, float: { mass: '40 t', damping: '12 kN*s/m', waterline: '12 m^2', draught: '1.5 m' }, source: 'invented for the demo' } }, // prettier-ignore
    chosen: null,
    rates,
    spreads,
    tests,
    testUsed: { test: 'model', reason: 'a model of this plate, driven at the amplitudes of the site (invented)' },
  };
  await writeFile(
    'samples/tested.stillplate.json',
    `${JSON.stringify(document, null, 2).replace(numbers, (list) => list.replace(/\s+/g, ' '))}\n`,
  );
}

async function recordOf(name: string) {
  const bytes = await readFile(`samples/${name}`);
  return { name, hash: createHash('sha256').update(bytes).digest('hex'), bytes: bytes.length };
}
