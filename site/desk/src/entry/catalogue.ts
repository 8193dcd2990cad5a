import { openScreen } from '../frame/open-screen.js';
import { Catalogue } from '../screens/catalogue.js';

openScreen(Catalogue, { roles: ['editor'] });
