import '../look/later-questions.css';
import './review-screen.ts';
import './questions/against-today.ts';
import './questions/body-map.ts';
import './questions/number.ts';
import './questions/shares.ts';
import './questions/signs.ts';
import './questions/some-of.ts';
