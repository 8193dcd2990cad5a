import { openAlone } from '../frame/open-alone.js';
import { NewPassword } from '../screens/new-password.js';

openAlone(NewPassword);
