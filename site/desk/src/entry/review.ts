import { openScreen } from '../frame/open-screen.js';
import { ReviewQueue } from '../screens/review-queue.js';

openScreen(ReviewQueue, { roles: ['reviewer'] });
