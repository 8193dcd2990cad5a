import { openScreen } from '../frame/open-screen.js';
import { BenchDay } from '../screens/bench-day.js';

openScreen(BenchDay, { roles: ['tester'] });
