/**
 * Limits of the oil grades. Source: SAE J300 (January 2015 and later), from independent public reproductions of the table.
 * Viscosities at 100 °C in mm²/s, `most` itself excluded; high shear at 150 °C in mPa s; cranking in Pa s at °C; pumping at most 60 Pa s without yield stress at °C.
 */
export const hotGrades: readonly { readonly grade: number; readonly least: number; readonly most: number; readonly highShear: number }[] = [
  { grade: 8, least: 4, most: 6.1, highShear: 1.7 },
  { grade: 12, least: 5, most: 7.1, highShear: 2 },
  { grade: 16, least: 6.1, most: 8.2, highShear: 2.3 },
  { grade: 20, least: 6.9, most: 9.3, highShear: 2.6 },
  { grade: 30, least: 9.3, most: 12.5, highShear: 2.9 },
  { grade: 40, least: 12.5, most: 16.3, highShear: 3.7 },
  { grade: 50, least: 16.3, most: 21.9, highShear: 3.7 },
  { grade: 60, least: 21.9, most: 26.1, highShear: 3.7 },
]
export const winterGrades: readonly { readonly grade: number; readonly least: number; readonly cranking: number; readonly crankingMost: number; readonly pumping: number }[] = [
  { grade: 0, least: 3.8, cranking: -35, crankingMost: 6.2, pumping: -40 },
  { grade: 5, least: 3.8, cranking: -30, crankingMost: 6.6, pumping: -35 },
  { grade: 10, least: 4.1, cranking: -25, crankingMost: 7, pumping: -30 },
  { grade: 15, least: 5.6, cranking: -20, crankingMost: 7, pumping: -25 },
  { grade: 20, least: 5.6, cranking: -15, crankingMost: 9.5, pumping: -20 },
  { grade: 25, least: 9.3, cranking: -10, crankingMost: 13, pumping: -15 },
]
