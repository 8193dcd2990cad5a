import { openScreen } from '../frame/open-screen.js';
import { NotHere } from '../screens/not-here.js';

openScreen(NotHere);
