import type { ListItem, ListRow } from './row.ts';

const source = 'common practice';
const item = (id: string, ...aliases: readonly string[]): ListItem => ({ id, aliases });

/** Rows that are several things at once. The first spelling is the one written back. */
export const LIST_ROWS: readonly ListRow[] = [
  {
    key: 'closure',
    kind: 'list',
    column: 'closure',
    aliases: ['fastening', 'verschluss'],
    open: false,
    items: [
      item('laces', 'lace', 'schnürung', 'schnürsenkel'),
      item('quick', 'quick lace', 'quick laces', 'schnellschnürung', 'dial', 'drehverschluss'),
      item('strap', 'straps', 'hook and loop', 'klett', 'klettverschluss'),
      item('pull-on', 'slip-on', 'slip on', 'schlupf', 'schlupfschuh'),
      item('zip', 'reißverschluss'),
    ],
    tools: ['eye'],
    source,
  },
  {
    key: 'tread',
    kind: 'list',
    column: 'tread',
    aliases: ['outsole', 'tread pattern', 'profil', 'sohlenprofil'],
    open: false,
    items: [
      item('smooth', 'glatt'),
      item('shallow', 'road', 'flach'),
      item('herringbone', 'fischgrät'),
      item('pivot', 'pivot point', 'drehpunkt'),
      item('fine-grooves', 'grooves', 'feine rillen', 'rillen'),
      item('lugs', 'lugged', 'stollen', 'noppen'),
      item('deep-lugs', 'tiefe stollen'),
    ],
    tools: ['eye'],
    source,
  },
  {
    // As marked on the shoe: a hand test on a counter never makes a sole slip-resistant.
    key: 'safety-marks',
    kind: 'list',
    column: 'safety marks',
    aliases: ['safety', 'sicherheitskennzeichen', 'kennzeichnung'],
    open: true,
    items: [
      // SRA, SRB and SRC are the earlier slip marks of ISO 20345, SR the present one (from memory).
      item('slip', 'sr', 'sra', 'srb', 'src', 'slip-resistant', 'rutschhemmend'),
      item('toe-cap', 'toe cap', 'zehenkappe', 'zehenschutzkappe'),
      item('antistatic', 'a', 'antistatisch'),
      item('puncture', 'p', 'pl', 'ps', 'durchtrittschutz'),
      item('fuel', 'fo', 'kraftstoffbeständig'),
    ],
    tools: ['box'],
    source,
  },
  {
    key: 'materials',
    kind: 'list',
    column: 'materials',
    aliases: ['material', 'upper material', 'obermaterial'],
    open: true,
    items: [
      item('mesh', 'netz', 'netzgewebe'),
      item('knit', 'strick', 'gestrick'),
      item('synthetic', 'synthetik', 'kunstleder', 'microfibre'),
      item('canvas', 'cotton', 'baumwolle'),
      item('leather', 'suede', 'nubuck', 'leder', 'wildleder', 'nubukleder'),
      item('wool', 'felt', 'wolle', 'filz'),
      item('rubber-inside', 'latex inside', 'gummi innen', 'latex'),
    ],
    tools: ['box'],
    source,
  },
  {
    key: 'colour',
    kind: 'list',
    column: 'colour',
    aliases: ['color', 'colours', 'colors', 'farbe', 'farben'],
    open: true,
    items: [
      item('black', 'schwarz'),
      item('white', 'weiß'),
      item('grey', 'gray', 'grau'),
      item('blue', 'navy', 'blau'),
      item('green', 'grün'),
      item('brown', 'tan', 'braun'),
      item('red', 'rot'),
      item('yellow', 'gelb'),
      // Said of the whole shoe, beside its colours: someone who never wears bright things wants none of it.
      item('bright', 'neon', 'leuchtend', 'bunt'),
    ],
    tools: ['eye'],
    source,
  },
  {
    key: 'widths',
    kind: 'list',
    column: 'widths',
    aliases: ['width fittings', 'weiten', 'schuhweiten'],
    open: false,
    items: [
      item('narrow', 'schmal'),
      item('standard', 'regular', 'normal', 'medium'),
      item('wide', 'weit'),
      item('extra-wide', 'extra wide', 'extra weit'),
    ],
    tools: ['box'],
    source,
  },
];
