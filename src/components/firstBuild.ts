/** One step of a first build: what it settles, what to have at hand for it, where to read and reckon, and what is known after it. */
export type Step = {
  readonly id: string
  readonly title: string
  readonly what: string
  readonly have: string
  readonly read: readonly string[]
  readonly reckon: readonly (readonly [path: string, name: string])[]
  readonly then: string
}

/** A first build in ten steps, in an order in which no step has to be taken back for a later one. */
export const steps: readonly Step[] = [
  {
    id: 'purpose', title: 'Say what the car is for',
    what: 'Road, track or both; how many minutes at full throttle; which power at which shaft speed would be enough. Everything after this is sized by these three answers, so write them down before anything is bought.',
    have: 'The rules of your class or your road authority, and an honest guess of the longest flat-out stretch.',
    read: ['how-to-use-this-handbook', 'the-order-of-decisions'], reckon: [['/build/', 'Build sheet: site, engine, limits']],
    then: 'A wanted power, a shaft speed limit and a boost target that the sheet can be filled with.',
  },
  {
    id: 'engine', title: 'Describe the engine as it is',
    what: 'Housing and rotor measures or displacement and compression ratio, ports, rotor weight. Rotary displacements are quoted in three ways; settle which one you speak.',
    have: 'The measures of the engine in front of you, or its maker’s figures, and the ratio of the rotors you will fit.',
    read: ['how-a-two-rotor-breathes', 'what-displacement-means-here', 'compression-ratio-and-the-rotor-recess'], reckon: [['/calculators/displacement-conventions/', 'Displacement in all conventions'], ['/calculators/recess-for-compression-ratio/', 'Recess for a ratio']],
    then: 'How much air one turn takes, and how hard the charge is pressed before it burns.',
  },
  {
    id: 'air', title: 'Turn power into air',
    what: 'Power is air first. From the wanted power comes the mass of air a second, and from that the boost at each shaft speed.',
    have: 'Height above sea level and the hottest day you drive on.',
    read: ['the-order-of-decisions'], reckon: [['/calculators/air-for-power/', 'Air for a wanted power'], ['/calculators/air-flow-at-speed/', 'Air at a speed and boost']],
    then: 'The flow and pressure ratio that the turbocharger must give.',
  },
  {
    id: 'turbo', title: 'Place the engine on a compressor map',
    what: 'Lay your line of flow and ratio on the maps of the turbochargers you can buy: away from surge at the bottom, from choke and top speed above. Then ask when boost comes.',
    have: 'The maker’s map as a table or a picture, and the turbine’s flow if it is stated.',
    read: ['placing-the-engine-on-a-compressor-map', 'response-inertia-and-the-boost-threshold'], reckon: [['/maps/', 'Compressor maps'], ['/turbochargers/', 'Two turbochargers side by side']],
    then: 'One turbocharger, the shaft speed from which it makes boost, and what it costs at the top.',
  },
  {
    id: 'boost', title: 'Hold the boost and cool the charge',
    what: 'The wastegate has to pass what the turbine does not need, its actuator has to stay shut until then, and the charge cooler has to bring the air down without eating the boost.',
    have: 'Valve diameter, spring pressures from a bench test, and one rated point of the cooler.',
    read: ['wastegate-spring-and-two-port-actuators', 'charge-cooling'], reckon: [['/calculators/wastegate-size/', 'Wastegate size'], ['/calculators/charge-temperature-end-to-end/', 'Charge temperature']],
    then: 'Boost that stays where it is put, and the temperature at which the charge arrives.',
  },
  {
    id: 'fuel', title: 'Feed it: injectors in two stages, pump and lines',
    what: 'Fuel follows air. The small stage must idle on a pulse that repeats, both together must be closed part of every turn, and the pump must give the flow at the pressure and voltage it has there.',
    have: 'Injector data with test pressure and dead times, the pump’s curve, lengths and bores of the lines.',
    read: ['how-much-fuel', 'what-an-injector-rating-means', 'two-stages-idle-tip-in-hand-over', 'pump-regulator-and-voltage'], reckon: [['/two-stages/', 'Hand-over'], ['/calculators/injector-sizing/', 'Injector size'], ['/calculators/fuel-pump/', 'Pump at pressure and voltage']],
    then: 'Both stages, where they hand over, and a pump with something left.',
  },
  {
    id: 'oil', title: 'Decide the oil, and how the seals get theirs',
    what: 'One oil carries the bearings and wets the seals, or a metered or mixed one does the second job. Grade follows clearance and temperature, not habit.',
    have: 'Bearing clearances as measured, and whether the metering pump stays.',
    read: ['one-oil-two-jobs', 'grade-temperature-and-clearance', 'metered-premixed-or-both'], reckon: [['/which-oil/', 'Which oil'], ['/mix-card/', 'Mix card']],
    then: 'A grade with its band, a dose for the seals, and a card for the fuel can.',
  },
  {
    id: 'heat', title: 'Carry the heat away',
    what: 'Coolant and oil take up heat for as long as you hold the throttle open, and the air that takes it over has to find a way out behind the coolers.',
    have: 'One rated point each of radiator and oil cooler, cap pressure, and the air that can get out again behind them.',
    read: ['where-the-heat-goes', 'sizing-the-radiator', 'air-through-the-core', 'coolant-mixture-and-boil-margin'], reckon: [['/session/', 'Track session'], ['/calculators/radiator-from-rated-point/', 'Radiator from a rated point']],
    then: 'The temperatures at which a session settles, or the minute at which it has to end.',
  },
  {
    id: 'driveline', title: 'Let the driveline take it',
    what: 'Clutch, flywheel, gears and shafts see the torque that the sweep shows, and the flywheel sees every turn of the limit.',
    have: 'Ratings with what they assume, masses and radii of flywheel and counterweight.',
    read: ['clutch-capacity', 'flywheel-mass-and-inertia', 'balance-and-matched-marks', 'fasteners-and-preload'], reckon: [['/calculators/clutch-capacity/', 'Clutch capacity'], ['/sweep/', 'Torque over shaft speed']],
    then: 'Whether torque and speed stay inside what each part is stated for.',
  },
  {
    id: 'weigh', title: 'Weigh the whole, measure, and check against the log',
    what: 'Now all margins stand on one page, worst first. Guesses that carry a thin margin are measured before parts are ordered; after the first pulls the log says which number was wrong.',
    have: 'A gauge or two, an afternoon at the bench, and later one logged pull.',
    read: ['first-pulls-log-against-sheet'], reckon: [['/margins/', 'Margins'], ['/chance/', 'Chance each margin holds'], ['/before-first-start/', 'Before first start'], ['/record/', 'Build record'], ['/log/', 'Log check']],
    then: 'A build whose weakest link you know, with a record to hand on.',
  },
]
