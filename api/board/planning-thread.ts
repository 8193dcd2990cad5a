/** A thread of its own works out a plan, so that the server goes on answering. */
import { parentPort, workerData } from 'node:worker_threads';
import { planNextSeason } from '../reckoning/results/plan-next-season.js';
import type { PlanTask } from '../reckoning/results/plan-next-season.js';

parentPort?.postMessage(planNextSeason(workerData as PlanTask));
