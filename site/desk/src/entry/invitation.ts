import { openAlone } from '../frame/open-alone.js';
import { Invitation } from '../screens/invitation.js';

openAlone(Invitation);
