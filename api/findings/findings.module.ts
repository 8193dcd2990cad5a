/**
 * Findings: what checks, traces and control pulls found on submissions, and what a reviewer answered.
 * States: unanswered → answered, once. They come with the work that finds them; reviewers answer.
 */
import { Module } from '@nestjs/common';
import { FindingsStore } from './findings.store.js';

@Module({ providers: [FindingsStore], exports: [FindingsStore] })
export class FindingsModule {}
