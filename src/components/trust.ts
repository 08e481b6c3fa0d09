/** What each part of the model is worth: what it rests on, where it is weak, and the one measurement that would add most. */
export type Part = { readonly id: string; readonly name: string; readonly rests: string; readonly weak: string; readonly measure: string; readonly settles: string }

export const parts: readonly Part[] = [
  {
    id: 'engine', name: 'Geometry and displacement',
    rests: 'The trochoid itself: exact, and tested against its own limits.',
    weak: 'Recess and plug-hole volumes are yours to give; the flank gap is a guess until it is measured.',
    measure: 'Recess volume of each rotor with a burette', settles: 'compression ratio',
  },
  {
    id: 'engine', name: 'Air the engine takes',
    rests: 'Volumetric efficiency over shaft speed, mean flow, no pulses.',
    weak: 'Until it was measured on this engine the curve is common practice. Tuning, overlap and back-pressure move it by tenths.',
    measure: 'Air or fuel flow with lambda, at full throttle over speed', settles: 'everything downstream: boost, fuel, heat and torque',
  },
  {
    id: 'boost', name: 'Compressor and turbine',
    rests: 'The map you enter, read between its own points; turbine as a nozzle of one capacity with a band of efficiency.',
    weak: 'An invented map says nothing about a real machine. A turbine map is rarely given, and pulses make real turbines give more and less than the steady figure.',
    measure: 'Pressure before the turbine at two speeds', settles: 'back-pressure, wastegate and the boost that can be held',
  },
  {
    id: 'fuel', name: 'Fuel supply',
    rests: 'Orifice flow, pipe friction and pump curves: old, well-tested formulas with published cases.',
    weak: 'Dead time, smallest repeatable pulse and hose losses belong to the part in hand. Wall film in tip-in is a first estimate.',
    measure: 'Flow of the whole system into a can at working pressure and voltage', settles: 'pump, hoses, regulator and wiring at once',
  },
  {
    id: 'oil', name: 'Bearings and oil',
    rests: 'Tables of the finite journal bearing, viscosity by standards, loads from inertia and gas.',
    weak: 'Peak gas load is estimated, housings and shaft are taken as stiff, and no published figure says what film or what dose a rotary engine needs.',
    measure: 'Clearances with a bore gauge, and oil temperature in the gallery', settles: 'film, pressure and grade',
  },
  {
    id: 'cooling', name: 'Heat',
    rests: 'An energy balance that closes, and coolers by effectiveness and transfer units.',
    weak: 'How heat splits between coolant, oil and exhaust is a share from few engines. Air through the core depends on ducts nobody has measured.',
    measure: 'Coolant flow with the temperatures either side of the radiator, once', settles: 'coolant heat and the size of the radiator',
  },
  {
    id: 'driveline', name: 'Clutch, flywheel and balance',
    rests: 'Statics and standards for plates, bolts, discs and rotors.',
    weak: 'Friction of a facing and of a thread wander by a third with heat and what is on them.',
    measure: 'A slip test of the clutch at a known torque', settles: 'clutch capacity',
  },
  {
    id: 'spark', name: 'Spark and wiring',
    rests: 'Circuit laws.',
    weak: 'Whether a spark of that energy lights this mixture is not in the model.',
    measure: 'Coil current and battery voltage at idle and at speed', settles: 'charge time and the charging budget',
  },
]
