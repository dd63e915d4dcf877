import './against-today.ts';
import './body-map.ts';
import './number.ts';
import './shares.ts';
import './signs.ts';
