/**
 * Findings: what checks, traces and control pulls found on submissions, and what a reviewer answered.
 * States: unanswered → answered, once. They come with the work that finds them; reviewers answer.
 */
import { Module } from '@nestjs/common';
import { FindingsReadModel } from './findings.read-model.js';
import { FindingsStore } from './findings.store.js';

@Module({ providers: [FindingsReadModel, FindingsStore], exports: [FindingsReadModel, FindingsStore] })
export class FindingsModule {}
