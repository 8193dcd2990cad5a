import { openScreen } from '../frame/open-screen.js';
import { House } from '../screens/house.js';

openScreen(House, { roles: ['admin'] });
