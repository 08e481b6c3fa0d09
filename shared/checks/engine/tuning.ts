import { type Check } from '../check.ts'

export const checks: readonly Check[] = [
  { id: 'helmholtz-bottle', of: 'helmholtz-frequency', in: { soundSpeed: 343, area: 1e-4, length: 0.05, volume: 1e-3 }, out: { out: { value: 77.2021, unit: 'Hz', tolerance: 1e-3 } },
    source: 'L. E. Kinsler and others, Fundamentals of Acoustics, chapter 10: f = c/(2π) sqrt(A/(L V)), evaluated with Python', confidence: 'derived independently' },
  { id: 'engelman-volume', of: 'tuning-volume', in: { displacement: '654.715 cm³', compressionRatio: 9 }, out: { out: { value: 409.197, unit: 'cm³', tolerance: 1e-3 } },
    source: 'M. P. Thompson, H. W. Engelman, ASME 69-GDP-11: effective volume V_d (r + 1)/(2 (r - 1))', confidence: 'from memory' },
  { id: 'engelman-frequency', of: 'helmholtz-frequency', in: { soundSpeed: 345, area: Math.PI * 0.0225 ** 2, length: 0.35, volume: '409.197 cm³' }, out: { out: { value: 182.977, unit: 'Hz', tolerance: 2e-3 } },
    source: 'M. P. Thompson, H. W. Engelman, ASME 69-GDP-11: runner of 45 mm bore and 350 mm length, evaluated with Python', confidence: 'derived independently' },
  { id: 'engelman-speed', of: 'tuned-speed', in: { frequency: 182.977, factor: 2.1 }, out: { out: { value: 5227.9, unit: 'rpm', tolerance: 0.1 } },
    source: 'M. P. Thompson, H. W. Engelman, ASME 69-GDP-11: N = 60 f/K; agrees with the imperial form within 0.04 %', confidence: 'from memory' },
  { id: 'open-pipe-392', of: 'open-pipe-frequency', in: { soundSpeed: 346, length: 0.4413 }, out: { out: { value: 392, unit: 'Hz', tolerance: 0.05 } },
    source: 'The Physics Classroom, sound waves, problem 29: an open pipe of 0.4413 m sounds 392 Hz at 346 m/s', confidence: 'confirmed by search' },
  { id: 'open-pipe-2', of: 'open-pipe-frequency', in: { soundSpeed: 343, length: 2 }, out: { out: { value: 85.8, unit: 'Hz', tolerance: 0.06 } },
    source: 'Standing longitudinal waves, worked examples 3–5 of a physics course: 2 m at 343 m/s', confidence: 'confirmed by search' },
  { id: 'closed-pipe-2', of: 'closed-pipe-frequency', in: { soundSpeed: 343, length: 2 }, out: { out: { value: 42.9, unit: 'Hz', tolerance: 0.06 } },
    source: 'Standing longitudinal waves, worked examples 3–5 of a physics course: 2 m at 343 m/s', confidence: 'confirmed by search' },
]
