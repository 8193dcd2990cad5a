import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/database.js';
import { nameAsSeen } from '../platform/identifiers/name-as-seen.js';
import type { SuccessionRequest } from '../contract/endpoints/catalogue.js';
import type { ClaimBasis, ClaimedQuantity } from '../contract/claims.js';
import type { Retirement } from '../contract/retired.js';
import type { Construction } from '../contract/constructions.js';

interface LineFields {
  readonly name: string;
  readonly material: string;
  readonly construction: Construction;
  readonly carriers: number | null;
  readonly densityGPerCm3: string;
}

interface ClaimFields {
  readonly basis: ClaimBasis;
  readonly printedText: string;
  readonly printedUnit: string;
  readonly valueSi: string;
  readonly seenOn: Date;
  readonly source: string;
}

const ONE_MORE = { version: { increment: 1 } } as const;
const WITH_NAMES = { claims: true, line: { include: { maker: true } } } as const;

/** The only writer of makers, lines, variants and claims. */
@Injectable()
export class CatalogueStore {
  /** The maker, locked until the transaction ends; null when there is none. */
  async lockMaker(tx: Transaction, slug: string) {
    await tx.$queryRaw`SELECT 1 FROM maker WHERE slug = ${slug} FOR UPDATE`;
    return tx.maker.findUnique({ where: { slug } });
  }

  /** Names of every maker but one. */
  async makerNames(tx: Transaction, besides?: string): Promise<string[]> {
    const rows = await tx.maker.findMany({ where: besides === undefined ? {} : { slug: { not: besides } }, select: { name: true } });
    return rows.map(({ name }) => name);
  }

  async succeed(tx: Transaction, data: SuccessionRequest & { byId: string; at: Date }): Promise<void> {
    await tx.succession.create({ data });
  }

  createMaker(tx: Transaction, data: { slug: string; name: string }) {
    return tx.maker.create({ data: { ...data, nameAsSeen: nameAsSeen(data.name) } });
  }

  changeMaker(tx: Transaction, id: string, name: string) {
    return tx.maker.update({ where: { id }, data: { name, nameAsSeen: nameAsSeen(name), ...ONE_MORE } });
  }

  /** The line with its maker, locked until the transaction ends; null when there is none. */
  async lockLine(tx: Transaction, slug: string) {
    await tx.$queryRaw`SELECT 1 FROM line WHERE slug = ${slug} FOR UPDATE`;
    return tx.line.findUnique({ where: { slug }, include: { maker: true } });
  }

  /** Names of every line but one. */
  async lineNames(tx: Transaction, besides?: string): Promise<string[]> {
    const rows = await tx.line.findMany({ where: besides === undefined ? {} : { slug: { not: besides } }, select: { name: true } });
    return rows.map(({ name }) => name);
  }

  createLine(tx: Transaction, data: LineFields & { slug: string; makerId: string }) {
    return tx.line.create({ data: { ...data, nameAsSeen: nameAsSeen(data.name) }, include: { maker: true } });
  }

  changeLine(tx: Transaction, id: string, fields: LineFields) {
    return tx.line.update({
      where: { id },
      data: { ...fields, nameAsSeen: nameAsSeen(fields.name), ...ONE_MORE },
      include: { maker: true },
    });
  }

  /** The variant with its names and claims, locked until the transaction ends; null when there is none. */
  async lockVariant(tx: Transaction, slug: string) {
    await tx.$queryRaw`SELECT 1 FROM variant WHERE slug = ${slug} FOR UPDATE`;
    return tx.variant.findUnique({ where: { slug }, include: WITH_NAMES });
  }

  /** The variant of a line in this size and colour, if it is on record. */
  variantOf(tx: Transaction, lineId: string, size: string, colour: string) {
    return tx.variant.findUnique({ where: { lineId_size_colour: { lineId, size, colour } } });
  }

  createVariant(tx: Transaction, data: { slug: string; lineId: string; size: string; colour: string }) {
    return tx.variant.create({ data, include: WITH_NAMES });
  }

  changeVariant(tx: Transaction, id: string, fields: { size: string; colour: string }) {
    return tx.variant.update({ where: { id }, data: { ...fields, ...ONE_MORE }, include: WITH_NAMES });
  }

  /** Adds a claim; the variant shows its claims, so that it counts as changed. */
  async createClaim(tx: Transaction, variantId: string, quantity: ClaimedQuantity, fields: ClaimFields) {
    await tx.variant.update({ where: { id: variantId }, data: ONE_MORE });
    return tx.claim.create({ data: { variantId, quantity, ...fields } });
  }

  /** Puts other words in place of a claim; the variant counts as changed. */
  async correctClaim(tx: Transaction, variantId: string, quantity: ClaimedQuantity, fields: ClaimFields) {
    await tx.claim.update({ where: { variantId_quantity: { variantId, quantity } }, data: { ...fields } });
    return tx.variant.update({ where: { id: variantId }, data: ONE_MORE, include: WITH_NAMES });
  }

  lockRow(tx: Transaction, kind: RetirableKind, slug: string): Promise<{ id: string; version: number } | null> {
    if (kind === 'maker') return this.lockMaker(tx, slug);
    return kind === 'line' ? this.lockLine(tx, slug) : this.lockVariant(tx, slug);
  }

  async retire(tx: Transaction, kind: RetirableKind, id: string, retired: Retirement): Promise<void> {
    const change = { where: { id }, data: { ...retired, ...ONE_MORE } };
    if (kind === 'maker') await tx.maker.update(change);
    else if (kind === 'line') await tx.line.update(change);
    else await tx.variant.update(change);
  }
}

/** What is retired. */
export type RetirableKind = 'maker' | 'line' | 'variant';
