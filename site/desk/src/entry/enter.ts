import { renderAtOnce } from '../bench/render-at-once.js';
import { openScreen } from '../frame/open-screen.js';
import { EnterReadings } from '../screens/enter-readings.js';

renderAtOnce();
openScreen(EnterReadings, { roles: ['tester'] });
