import { describe } from 'vitest';
import { MAIN } from '../profile/main-knowledge.ts';
import { profileLaws } from './profile-laws.ts';

describe('the laws of a profile, by the rules of the main flow', () => profileLaws(MAIN, 15));
