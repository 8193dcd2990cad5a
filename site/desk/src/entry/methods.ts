import { openScreen } from '../frame/open-screen.js';
import { MethodsAndRigs } from '../screens/methods-and-rigs.js';

openScreen(MethodsAndRigs, { roles: ['editor'] });
