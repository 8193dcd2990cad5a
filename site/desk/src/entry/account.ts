import { openScreen } from '../frame/open-screen.js';
import { OwnAccount } from '../screens/own-account.js';

openScreen(OwnAccount);
