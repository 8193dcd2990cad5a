import { openScreen } from '../frame/open-screen.js';
import { Home } from '../screens/home.js';

openScreen(Home);
