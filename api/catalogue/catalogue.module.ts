/**
 * Makers, their lines and variants with the claims on the label, and the spools on the shelf with their blind codes.
 * States: none; slugs and blind codes never change, a re-identification is added and never taken back.
 * Editors write. Reviewers and admins read lines and variants, anybody signed in reads makers.
 * Only editors read what a blind code stands for; testers see code and length.
 * Nobody re-identifies a spool that they tested.
 */
import { Module } from '@nestjs/common';
import { CatalogueReadModel } from './catalogue.read-model.js';

@Module({ providers: [CatalogueReadModel], exports: [CatalogueReadModel] })
export class CatalogueModule {}
