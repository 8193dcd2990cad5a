import { openScreen } from '../frame/open-screen.js';
import { OwnSubmissions } from '../screens/own-submissions.js';

openScreen(OwnSubmissions, { roles: ['tester'] });
