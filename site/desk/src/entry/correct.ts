import { openScreen } from '../frame/open-screen.js';
import { Correct } from '../screens/correct.js';

openScreen(Correct, { roles: ['editor'] });
