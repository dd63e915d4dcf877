import type { Shelf, Shoe } from '../src/stock/shoe.ts';
import type { ArchetypeName, Figures } from './archetypes.ts';

/** One invented model: a made-up place name, the kind of shoe it is, who it is shelved for, and how it differs from its kind. */
export interface Model {
  readonly name: string;
  readonly kind: ArchetypeName;
  readonly shelves: readonly Shelf[];
  readonly colour: readonly string[];
  readonly differs?: Partial<Figures>;
  readonly marks?: Shoe['marks'];
  readonly lists?: Shoe['lists'];
  /** Same figures, save these differences, as an earlier model: a near-twin. */
  readonly twinOf?: string;
}

const model = (
  name: string,
  kind: ArchetypeName,
  shelves: string,
  colour: string,
  more: Partial<Model> = {},
): Model => ({
  name,
  kind,
  shelves: shelves.split(' ') as Shelf[],
  colour: colour.split(' '),
  ...more,
});
const WM = 'women men';

/** The shop measured these itself, so nothing is missing: the ones it fetches most. */
export const MEASURED: readonly string[] = [
  'Alderpath',
  'Dunmarrow',
  'Gorsehollow',
  'Juniperstow',
  'Larkenshaw',
  'Nettlecombe Way',
  'Quillmarsh',
  'Sorrelgarth',
  'Ashenscar',
  'Driftholt',
  'Gritsedge',
  'Ironbourne',
  'Marramcourt',
  'Orlhythe',
  'Quernbridge',
  'Thornyscale',
  'Whimbrelton',
  'Yaffleton',
  'Barleyfoss',
  'Dockenfell',
  'Foxgloam',
  'Jorvikhurst',
  'Northcairn',
  'Skipmarrow',
  'Yewtwirl',
  'Falconmoss',
  'Jennelscar',
  'Nimblegate',
  'Quaysorrel',
  'Wardlinnet',
  'Copperlarder',
  'Evenmarrow',
  'Forgebramble',
  'Softmarch',
  'Teaselby',
  'Umbelgrove',
  'Polewhisker',
  'Brackenhithe',
  'Lintelmoor',
  'Hobsgarner',
  'Thrushgill',
];

/** Every name is made up of two words put together; a name that turns out to belong to a shoe is to be replaced. */
export const MODELS: readonly Model[] = [
  model('Alderpath', 'daily', WM, 'blue grey'),
  model('Bramblewick', 'daily', WM, 'black'),
  model('Cindermoor', 'daily', WM, 'green', { differs: { price: 115 } }),
  // The near-twins: a new edition beside the old one, a little heavier and dearer.
  model('Cindermoor Two', 'daily', WM, 'green', { twinOf: 'Cindermoor', differs: { mass: 4, price: 15 } }),
  model('Dunmarrow', 'tall-soft', WM, 'white blue'),
  model('Eskerfold', 'tall-soft', WM, 'yellow bright', { differs: { rebound: 5, mass: 275 } }),
  model('Fennelgate', 'tall-soft', WM, 'grey', { differs: { 'platform-width': 122, 'heel-counter': 4 } }),
  model('Gorsehollow', 'light', WM, 'red bright'),
  model('Harrowmere', 'light', WM, 'black white'),
  model('Ivorstrand', 'light', 'any', 'blue', { differs: { cushion: 2, bend: 5 } }),
  model('Juniperstow', 'plated', WM, 'white bright'),
  model('Kestrelholm', 'plated', 'any', 'green bright', { differs: { mass: 218, price: 175 } }),
  model('Larkenshaw', 'firm', WM, 'grey'),
  model('Mallowbrae', 'firm', 'any', 'black', { differs: { 'heel-stack': 19, 'forefoot-stack': 16 } }),
  model('Nettlecombe Way', 'support', WM, 'blue'),
  model('Oxlipfield', 'support', WM, 'black grey', { lists: { widths: ['standard', 'wide'] } }),
  model('Pennyroyd', 'support', WM, 'white', { differs: { cushion: 4, mass: 325 } }),
  model('Quillmarsh', 'some-support', WM, 'grey green'),
  model('Rowanstile', 'some-support', WM, 'black', { lists: { widths: ['standard', 'wide', 'extra-wide'] } }),
  model('Sorrelgarth', 'roomy', WM, 'brown'),
  model('Tanglewold', 'roomy', WM, 'blue', { differs: { 'heel-stack': 24, 'forefoot-stack': 24 } }),
  model('Umberleat', 'roomy', 'any', 'black', { lists: { widths: ['standard', 'wide'] } }),
  model('Vetchlow', 'plain', WM, 'grey'),
  model('Withywater', 'plain', WM, 'black', { differs: { price: 49 } }),
  model('Yarrowkeep', 'track', 'any', 'yellow bright'),
  model('Zephyrdale', 'track', 'any', 'white', { differs: { mass: 200, cushion: 3 } }),

  model('Ashenscar', 'easy-trail', WM, 'green'),
  model('Beckrigg', 'easy-trail', WM, 'brown', { marks: { waterproof: true, 'quick-drying': false } }),
  model('Cragdapple', 'easy-trail', WM, 'grey', { differs: { price: 89 } }),
  model('Driftholt', 'rocky', WM, 'black'),
  model('Embercleugh', 'rocky', WM, 'red', { differs: { price: 115 } }),
  model('Fernlaithe', 'fell', 'any', 'yellow bright'),
  model('Gritsedge', 'fell', 'any', 'blue', { differs: { 'lug-depth': 8, mass: 225 } }),
  model('Heatherlund', 'fell', WM, 'black', { differs: { cushion: 3, 'heel-stack': 22, 'forefoot-stack': 17 } }),
  model('Ironbourne', 'long-trail', WM, 'blue'),
  model('Jackdawtor', 'long-trail', WM, 'green grey'),
  model('Knottmere', 'low-trail', WM, 'brown', { differs: { price: 140 } }),
  model('Lingshaw', 'low-trail', 'any', 'grey', { differs: { price: 135 }, lists: { widths: ['standard', 'wide'] } }),

  model('Marramcourt', 'court-mid', 'any', 'white red'),
  model('Nightjarby', 'court-mid', WM, 'black'),
  model('Orlhythe', 'court-high', 'any', 'blue white'),
  model('Plovertoft', 'court-high', 'any', 'black red', { differs: { cushion: 3, mass: 455 } }),
  model('Quernbridge', 'netball', WM, 'white'),
  model('Redshankley', 'netball', WM, 'grey blue', { differs: { mass: 295, cushion: 4 } }),
  model('Sedgecroft', 'netball', 'women', 'black', { lists: { widths: ['narrow', 'standard'] } }),
  model('Thornyscale', 'volley', WM, 'blue'),
  model('Usktern', 'volley', 'any', 'white', { differs: { mass: 285 } }),
  model('Vaneholm', 'handball', 'any', 'red'),
  model('Whimbrelton', 'handball', WM, 'black'),
  model('Yaffleton', 'tennis', WM, 'white'),
  model('Aldermint', 'tennis', WM, 'blue', { lists: { widths: ['standard', 'wide'] } }),
  model('Barleyfoss', 'padel', WM, 'green'),
  model('Cloverspan', 'padel', 'any', 'grey'),
  model('Dockenfell', 'badminton', WM, 'white yellow'),
  model('Elmpennant', 'badminton', 'any', 'blue', { differs: { cushion: 4, mass: 305 } }),
  model('Foxgloam', 'squash', 'any', 'white'),
  model('Gullwharf', 'squash', WM, 'black'),
  model('Hazelquay', 'table-tennis', 'any', 'red white'),

  model('Ibexstone', 'raised-heel', 'any', 'black'),
  model('Jorvikhurst', 'raised-heel', WM, 'white red', { differs: { 'heel-stack': 28, price: 120 } }),
  model('Kelpgarrow', 'raised-heel', WM, 'blue', { lists: { widths: ['standard', 'wide'] } }),
  model('Lodestack', 'flat-lift', WM, 'black'),
  model('Larchanvil', 'raised-heel', 'any', 'grey', { differs: { mass: 480, price: 175, 'heel-stack': 32 } }),
  model('Millstow', 'flat-lift', WM, 'grey', { differs: { 'collar-height': 1, mass: 300 } }),
  model('Northcairn', 'circuit', WM, 'black'),
  model('Otterclough', 'circuit', WM, 'green grey', { differs: { mass: 335, 'midfoot-hold': 5 } }),
  model('Pitchgrain', 'circuit', 'any', 'blue'),
  model('Quicksedge', 'gym-class', WM, 'grey'),
  model('Ripplemead', 'gym-class', WM, 'black', { differs: { price: 55 }, marks: { washable: true } }),
  model('Skipmarrow', 'bounce', WM, 'blue white'),
  model('Trillbeck', 'bounce', 'any', 'black', { differs: { mass: 270, 'heel-stack': 22, 'forefoot-stack': 17 } }),
  model('Upspringle', 'bounce', WM, 'red bright', { differs: { cushion: 4, mass: 262 } }),
  model('Velvetrush', 'dance', 'women', 'black', { lists: { tread: ['pivot'] } }),
  model('Waltzbrook', 'dance', 'any', 'black', {
    differs: { rebound: 2 },
    lists: { tread: ['smooth'], materials: ['leather'] },
  }),
  model('Yewtwirl', 'dance', WM, 'grey', { differs: { cushion: 4, mass: 250 }, lists: { tread: ['pivot'] } }),
  model('Anchorthwaite', 'rowing', 'any', 'blue'),
  model('Brinewick', 'spin', 'any', 'black', { lists: { closure: ['strap', 'quick'] } }),
  model('Cottonbarrow', 'thin', WM, 'brown', { marks: { washable: true }, lists: { materials: ['canvas'] } }),
  model('Dewlatch', 'thin', 'any', 'black', { marks: { washable: true } }),
  model('Eaveleap', 'grip', 'any', 'grey'),

  model('Falconmoss', 'hike-low', WM, 'brown', { marks: { waterproof: true } }),
  model('Greywether', 'hike-low', WM, 'grey', { lists: { widths: ['standard', 'wide'] } }),
  model('Hollinstep', 'hike-light', WM, 'green', {
    marks: { 'quick-drying': true },
    lists: { materials: ['mesh', 'synthetic'] },
  }),
  model('Islayfen', 'hike-light', WM, 'blue', { lists: { materials: ['mesh', 'synthetic'], closure: ['quick'] } }),
  model('Jennelscar', 'hike-mid', WM, 'brown', { marks: { waterproof: true } }),
  model('Kirkstride', 'hike-mid', WM, 'grey', {
    differs: { mass: 470, price: 150 },
    lists: { materials: ['synthetic'] },
  }),
  model('Lonnenpike', 'hike-mid', WM, 'green', {
    marks: { waterproof: true },
    lists: { widths: ['standard', 'wide'] },
  }),
  model('Muckleridge', 'hike-high', WM, 'brown', { marks: { waterproof: true }, lists: { materials: ['leather'] } }),

  model('Nimblegate', 'everyday', WM, 'white'),
  model('Oatenlea', 'everyday', WM, 'black', { lists: { materials: ['leather'] } }),
  model('Pebbledyke', 'everyday', WM, 'grey', { differs: { price: 59 } }),
  model('Quaysorrel', 'brisk', WM, 'blue'),
  model('Rushmallow', 'brisk', WM, 'grey green'),
  model('Softmarch', 'wide-walk', WM, 'black', {
    lists: { closure: ['strap'], widths: ['standard', 'wide', 'extra-wide'] },
  }),
  model('Teaselby', 'wide-walk', WM, 'brown', { lists: { materials: ['leather'], widths: ['wide', 'extra-wide'] } }),
  model('Umbelgrove', 'easy-on', WM, 'grey', {
    marks: { washable: true },
    lists: { closure: ['pull-on'], materials: ['knit'] },
  }),
  model('Woolmarsh', 'easy-on', 'any', 'brown', {
    differs: { 'midfoot-hold': 1 },
    lists: { closure: ['pull-on'], materials: ['wool'] },
  }),
  model('Veerbank', 'rocker-walk', WM, 'black'),
  model('Polewhisker', 'poles-walk', WM, 'blue', { lists: { tread: ['lugs'] } }),

  model('Wardlinnet', 'ward', WM, 'white'),
  model('Yarncastle', 'ward', WM, 'black', { differs: { cushion: 5, price: 99 } }),
  model('Applecote', 'ward', 'any', 'blue', { lists: { closure: ['strap'] } }),
  model('Brothgarth', 'galley', 'any', 'black', { marks: { waterproof: true } }),
  model('Copperlarder', 'galley', WM, 'black white', { marks: { waterproof: true } }),
  model('Daywatch Lea', 'long-stand', WM, 'black', { lists: { closure: ['laces'], materials: ['leather'] } }),
  model('Evenmarrow', 'long-stand', WM, 'grey', { lists: { closure: ['laces'], widths: ['standard', 'wide'] } }),
  model('Forgebramble', 'safety-low', WM, 'black'),
  model('Girderheath', 'safety-low', 'any', 'grey', {
    differs: { mass: 420, price: 125 },
    lists: { materials: ['synthetic'] },
  }),
  model('Haulmstead', 'safety-boot', 'any', 'black brown', { marks: { waterproof: true } }),

  model('Acornskip', 'daily', 'junior', 'green bright', { lists: { closure: ['strap'] } }),
  model('Beechling', 'daily', 'junior', 'blue'),
  model('Conkerway', 'easy-trail', 'junior', 'brown'),
  model('Damselbounce', 'netball', 'junior', 'white'),
  model('Elderlet', 'badminton', 'junior', 'blue', { lists: { closure: ['strap'] } }),
  model('Frogletmoor', 'hike-low', 'junior', 'green', { marks: { waterproof: true } }),
  model('Gosamble', 'gym-class', 'junior', 'black', { marks: { washable: true } }),

  model('Brackenhithe', 'everyday', WM, 'grey blue', {
    differs: { 'midfoot-hold': 4, price: 85 },
    lists: { closure: ['strap'] },
  }),
  model('Lintelmoor', 'ward', WM, 'white', {
    differs: { mass: 310, price: 95 },
    lists: { closure: ['strap'], widths: ['standard', 'wide'] },
  }),
  model('Pearlcress', 'long-stand', WM, 'white', {
    differs: { bend: 3, mass: 300, price: 110 },
    lists: { closure: ['quick'] },
  }),
  model('Hobsgarner', 'galley', WM, 'black', { differs: { mass: 385, price: 85 }, marks: { waterproof: true } }),
  model('Anvilmere', 'safety-low', WM, 'black', { differs: { cushion: 4, mass: 435, price: 115 } }),
  model('Thrushgill', 'rocky', WM, 'grey green', { differs: { mass: 300, 'medial-support': 0, price: 110 } }),
];
