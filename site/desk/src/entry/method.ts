import { openScreen } from '../frame/open-screen.js';
import { Method } from '../screens/method.js';

openScreen(Method);
