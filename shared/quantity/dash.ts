/**
 * Bore of a hose by its dash number. The dash number is the outside diameter, in sixteenths of an inch, of the tube that
 * the hose replaces; the bore is smaller. Source: MIL-H-8794 hose sizes.
 */
const bores: Readonly<Record<number, number>> = { 3: 0.125, 4: 0.1875, 5: 0.25, 6: 0.3125, 8: 0.40625, 10: 0.5, 12: 0.625, 16: 0.875, 20: 1.125, 24: 1.375, 32: 1.8125 }

/** Bore in metres, or null where the table has no such size. */
export const dashBore = (size: number): number | null => (bores[size] === undefined ? null : bores[size] * 0.0254)
export const dashSizes: readonly number[] = Object.keys(bores).map(Number)
