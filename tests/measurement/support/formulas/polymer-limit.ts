import { requirePositive } from '../../../../api/measurement/figures/require-positive.js';

const AVOGADRO_PER_MOL = 6.02214076e23;

/** Edges of a crystal's unit cell; the chains run along c. */
export interface UnitCell {
  aNm: number;
  bNm: number;
  cNm: number;
  chainsPerCell: number;
}

/** Orthorhombic polyethylene (crystallography textbooks, from memory). */
export const POLYETHYLENE_CELL: UnitCell = { aNm: 0.7417, bNm: 0.4945, cNm: 0.2547, chainsPerCell: 2 };

/**
 * Cross-section that one chain of a crystal takes up.
 *
 * Formula: a b/chains
 * @param cell unit cell [nm]
 * @returns area per chain [nm²]
 * @throws MeasurementError 'figures/not-positive' unless every edge and the number of chains are finite and above 0
 * @see MECHANICS
 * @example areaPerChainNm2(POLYETHYLENE_CELL) // 0.1833…
 */
export function areaPerChainNm2(cell: UnitCell): number {
  requireCell(cell, 'areaPerChainNm2');
  return (cell.aNm * cell.bNm) / cell.chainsPerCell;
}

/**
 * Stress that would break every chain of a perfect crystal at once: no fibre of that polymer can carry more.
 *
 * Formula: σ = bond force/area per chain (1 nN/nm² = 1 GPa)
 * @param bondForceNN force that breaks one chain, above 0 [nN]
 * @param cell unit cell [nm]
 * @returns σ [GPa]
 * @throws MeasurementError 'figures/not-positive' for the force or the cell
 * @see MECHANICS
 * @example idealStrengthGPa(6, POLYETHYLENE_CELL) // 32.7…
 */
export function idealStrengthGPa(bondForceNN: number, cell: UnitCell): number {
  requirePositive(bondForceNN, 'bondForceNN', 'idealStrengthGPa');
  return bondForceNN / areaPerChainNm2(cell);
}

/**
 * Density of a perfect crystal.
 *
 * Formula: ρ = units · M/(N_A a b c)
 * @param cell unit cell [nm]
 * @param unitMolarMassGPerMol M of one repeat unit, above 0 [g/mol]
 * @param unitsPerCell repeat units in one cell, above 0 [1]
 * @returns ρ [g/cm³]
 * @throws MeasurementError 'figures/not-positive' for any argument
 * @see MECHANICS
 * @example crystalDensityGPerCm3(POLYETHYLENE_CELL, 14.02658, 4) // 0.997…
 */
export function crystalDensityGPerCm3(cell: UnitCell, unitMolarMassGPerMol: number, unitsPerCell: number): number {
  requireCell(cell, 'crystalDensityGPerCm3');
  requirePositive(unitMolarMassGPerMol, 'unitMolarMassGPerMol', 'crystalDensityGPerCm3');
  requirePositive(unitsPerCell, 'unitsPerCell', 'crystalDensityGPerCm3');
  const volumeCm3 = cell.aNm * cell.bNm * cell.cNm * 1e-21;
  return (unitsPerCell * unitMolarMassGPerMol) / (AVOGADRO_PER_MOL * volumeCm3);
}

function requireCell(cell: UnitCell, where: string): void {
  requirePositive(cell.aNm, 'aNm', where);
  requirePositive(cell.bNm, 'bNm', where);
  requirePositive(cell.cNm, 'cNm', where);
  requirePositive(cell.chainsPerCell, 'chainsPerCell', where);
}
