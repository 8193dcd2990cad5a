import { openScreen } from '../frame/open-screen.js';
import { HandInFile } from '../screens/hand-in-file.js';

openScreen(HandInFile, { roles: ['tester'] });
