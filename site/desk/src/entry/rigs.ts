import { openScreen } from '../frame/open-screen.js';
import { Rigs } from '../screens/rigs.js';

openScreen(Rigs, { roles: ['tester', 'reviewer', 'editor'] });
