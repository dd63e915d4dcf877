/** Twelve activities that load the foot in different ways: one from each corner of the table. */
export const TWELVE = [
  'road-running',
  'trail-running',
  'rope-skipping',
  'lifting',
  'volleyball',
  'netball',
  'tennis',
  'dance-fitness',
  'hill-walking',
  'everyday-walking',
  'standing-work',
  'mixed-circuit',
];
