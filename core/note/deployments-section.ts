import type { SeaDeployment } from '../document/sea-tests-field.ts';
import { seaKey } from '../motion/sea-key.ts';
import type { Model } from '../model.ts';
import type { Print } from '../print-in.ts';
import type { Block, Section } from './note.ts';
import { seaComparison } from './sea-comparison.ts';
import { seaBlocks, seaCautions } from './sea-section.ts';

/** Deployments with an accepted result, and each against the first at like seas; none where there is none. */
export function deploymentsSection(model: Model, print: Print): Section[] {
  const accepted = (model.document.tests?.sea ?? []).flatMap((one) => (one.result ? [{ ...one, result: one.result }] : [])); // prettier-ignore
  const [first, ...others] = accepted;
  if (!first) return [];
  return [
    {
      title: 'In the sea',
      blocks: [{ kind: 'list', tone: 'caution', items: seaCautions }],
      sections: [
        ...accepted.map((one) => ({ title: one.title, blocks: [...headOf(one), ...seaBlocks(one.result, one.title, print)] })), // prettier-ignore
        ...others.map((one) => seaComparison(first, one, print)),
      ],
    },
  ];
}

function headOf(one: SeaDeployment): Block[] {
  const { record, second, setup, result } = one;
  const stated = (name: string, typed: string | undefined): string => (typed === undefined ? '' : `; ${name} ${typed}`);
  return [
    ...(result && result.key === seaKey(one) ? [] : [{ kind: 'paragraph', tone: 'loud', text: 'Settings or records were changed after this result was accepted: it is of those before.' } as const]), // prettier-ignore
    {
      kind: 'paragraph',
      text: `Record ${record.name}, ${record.bytes} bytes, SHA-256 ${record.hash}${second ? `; second logger ${second.record.name}, ${second.record.bytes} bytes, SHA-256 ${second.record.hash}` : ''}. High pass ${setup.highPass.typed}${stated('noise of the float’s accelerometer', setup.accelerationNoise?.typed)}${stated('of the stroke', setup.strokeNoise?.typed)}${stated('of the load cell', setup.forceNoise?.typed)}${stated('of the plate’s accelerometer', setup.plateNoise?.typed)}${stated('of the pressure', setup.pressureNoise?.typed)}${stated('clocks within', setup.clock?.typed)}; scales within ${100 * setup.scaleError} %${stated('line', setup.lineLength?.typed)}${stated('its stiffness', setup.stiffness?.typed)}${stated('attachment ahead by', setup.arm?.typed)}${stated('plate at', setup.plateDepth?.typed)}${stated('water of', setup.density?.typed)}${stated('bed at', setup.waterDepth?.typed)}${stated('limit', setup.limit?.typed)}. Reduced by Stillplate ${result?.programVersion ?? ''}.`,
    },
  ];
}
