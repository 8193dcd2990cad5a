import { openScreen } from '../frame/open-screen.js';
import { ReviewOne } from '../screens/review-one.js';

openScreen(ReviewOne, { roles: ['reviewer', 'editor'] });
