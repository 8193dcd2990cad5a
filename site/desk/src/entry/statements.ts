import { openScreen } from '../frame/open-screen.js';
import { Statements } from '../screens/statements.js';

openScreen(Statements, { roles: ['editor', 'admin'] });
