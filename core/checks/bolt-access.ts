import { spannerRooms, type SpannerRoom } from '../geometry/spanner-room.ts';
import type { Model } from '../model.ts';
import { oncePerModel } from '../once-per-model.ts';
import { bolted, boltAt } from './bolt-inputs.ts';
import { missing, type Check, type Step } from './check.ts';
import { fieldPlaces, panelAt } from './field-inputs.ts';
import { constant } from './inputs.ts';

const roomsOf = oncePerModel(({ geometry, document, catalogue }) => spannerRooms(geometry, document, catalogue));

/** The bolt of a panel with the least room for its tool. */
export function leastRoom(model: Model, bay: string): SpannerRoom | undefined {
  const rooms = roomsOf(model);
  const own = panelAt(model, bay).bolts.map(({ id }) => rooms.get(id)!);
  return own.length > 0 ? own.reduce((a, b) => (b.room < a.room ? b : a)) : undefined;
}

const socket: readonly Step[] = [
  { symbol: 'D_s', expression: '1.3 * s_h + c_5', unit: 'mm', meaning: 'outer diameter of a socket or ring spanner' },
  { symbol: 'r_s', expression: 'D_s / 2 + c_1', unit: 'mm', meaning: 'room that it takes about the axis' },
];

/** Room for a socket over head and nut, between tubes, eyes, panels and other bolts. */
export const boltAccess: Check = {
  id: 'bolt-access',
  title: 'Room for the spanner',
  limitState: 'strength',
  source: [
    {
      document: 'common practice, no source',
      clause: 'outer diameter 1.3 s + 5 mm covers the sockets of DIN 3124 as remembered, 13 to 36 mm',
    },
  ],
  places: fieldPlaces,
  applies: bolted,
  once: true,
  detailing: true,
  inputs: {
    s_h: {
      unit: 'mm',
      meaning: 'head and nut across flats',
      from: 'catalogue: fasteners',
      read: (model, bay) => boltAt(model, bay).headAcrossFlats,
    },
    c_5: constant(5, 'mm', 'two walls of a socket less its taper', 'common practice, no source'),
    c_1: constant(1, 'mm', 'play of the tool', 'common practice, no source'),
    r_f: {
      unit: 'mm',
      meaning:
        'least room from the axis of a bolt to a tube, eye, panel or other bolt, at head or nut; 250 mm at the most',
      from: 'geometry',
      read: (model, bay) =>
        leastRoom(model, bay)?.room ?? missing('bolts: no side of the panel is long enough for its edge distances'),
    },
    e_h: {
      unit: 'mm',
      meaning: 'across corners, the least that the standards allow',
      from: 'catalogue: fasteners',
      read: (model, bay) => boltAt(model, bay).headAcrossCorners,
    },
  },
  steps: { 'partial factors': socket, 'allowable stress': socket },
  demand: 'r_s',
  capacity: 'r_f',
  second: {
    title: 'the corners themselves have to turn at the least; a tool twice as wide as the flats is the widest',
    source: [{ document: 'derived by hand; twice the flats: common practice, no source' }],
    steps: [
      { symbol: 'r_low', expression: 'e_h / 2', unit: 'mm', meaning: 'half across corners' },
      { symbol: 'r_high', expression: 's_h + c_1', unit: 'mm', meaning: 'tool of twice the flats, and its play' },
    ],
    of: 'r_s',
    low: 'r_low',
    high: 'r_high',
  },
  cautions: [
    'Room across the axis only: see that the tool, its length and the hand reach there with the plate as it lies on deck, in gloves.',
    'A torque wrench needs a socket; a tensioner or a multiplier with its reaction arm needs more.',
  ],
};
