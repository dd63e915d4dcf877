import type { ListItem } from './row.ts';

/** What a shop sells a shoe for, as the trade sorts its walls (common practice). */
export const USES = ['road', 'trail', 'court', 'gym', 'lifting', 'hiking', 'walking', 'work'] as const;

const aliases = {
  road: ['running', 'road running', 'run', 'laufen', 'straße', 'straßenlauf'],
  trail: ['trail running', 'gelände', 'geländelauf'],
  court: ['indoor court', 'indoor', 'tennis', 'halle', 'hallenschuh', 'platz'],
  gym: ['fitness', 'training', 'studio'],
  lifting: ['weightlifting', 'gewichtheben'],
  hiking: ['hike', 'outdoor', 'wandern'],
  walking: ['walk', 'everyday', 'gehen', 'spazieren', 'alltag', 'freizeit'],
  work: ['occupational', 'safety', 'arbeit', 'beruf'],
};
/** A shop may sort its walls by other words; they are kept and go with no activity. */
export const USE_WORDS: readonly ListItem[] = USES.map((id) => ({ id, aliases: aliases[id] }));
