import { openScreen } from '../frame/open-screen.js';
import { Proposals } from '../screens/proposals.js';

openScreen(Proposals, { roles: ['reviewer', 'editor'] });
