import { describe } from 'vitest';
import { TOY } from '../profile/toy-knowledge.ts';
import { profileLaws } from './profile-laws.ts';

describe('the laws of a profile, by rules invented for tests', () => profileLaws(TOY, 40));
