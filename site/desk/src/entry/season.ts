import { openScreen } from '../frame/open-screen.js';
import { Season } from '../screens/season.js';

openScreen(Season, { roles: ['editor'] });
