import { COLUMNS } from './columns.ts';
import { EXAMPLE_ID, EXAMPLE_NAME } from './example.ts';
import type { Stock } from './shoe.ts';
import { type WriteOptions, writeStock } from './write-csv.ts';

/** Made up, with every column filled, to show how; the shop deletes its lines. */
const EXAMPLE: Stock = {
  asOf: '',
  shoes: [
    {
      id: EXAMPLE_ID,
      name: EXAMPLE_NAME,
      use: ['road'],
      shelf: 'women',
      numbers: {
        mass: 245,
        'heel-stack': 32,
        'forefoot-stack': 24,
        drop: 8,
        cushion: 3,
        rebound: 3,
        bend: 3,
        'forefoot-stiffness': 3,
        rocker: 1,
        twist: 3,
        'heel-counter': 3,
        'medial-support': 0,
        'platform-width': 106,
        'midfoot-hold': 3,
        'toe-box-shape': 2,
        'toe-box-depth': 2,
        'instep-volume': 2,
        'collar-height': 1,
        'lug-depth': 1,
        price: 120,
      },
      marks: {
        'non-marking': true,
        'removable-insole': true,
        waterproof: false,
        'quick-drying': false,
        washable: false,
        'closed-heel': true,
      },
      lists: {
        closure: ['laces'],
        tread: ['shallow'],
        'safety-marks': ['slip'],
        materials: ['mesh', 'synthetic'],
        colour: ['blue', 'white'],
        widths: ['standard', 'wide'],
      },
      massSize: 'eu 38',
      sizeOffset: 0,
      usWomenOffset: 1.5,
    },
  ],
  boxes: [
    {
      id: 'example-1-39',
      shoe: EXAMPLE_ID,
      labels: { eu: '39', uk: '6', 'us-women': '8', cm: '25' },
      innerLength: 257,
      width: 'standard',
      place: 'A1',
      onHand: 2,
      reserved: 0,
    },
    {
      id: 'example-1-40',
      shoe: EXAMPLE_ID,
      labels: { eu: '40', uk: '6.5', 'us-women': '8.5', mondopoint: '255' },
      width: 'wide',
      place: 'A1',
      onHand: 1,
      reserved: 0,
    },
  ],
};

/** A stock list to fill in: every column of the attribute table, and one made-up model in two sizes to show how. */
export const stockTemplate = (options: WriteOptions = {}): string =>
  writeStock(EXAMPLE, { ...options, columns: COLUMNS });
