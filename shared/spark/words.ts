import { type WordsFor } from '../quantity/quantity.ts'
import { type Reasons } from '../build/field.ts'
import type * as quantities from './quantities.ts'
import type * as fields from './fields.ts'

/** What each quantity of spark and charging means and how to measure it. */
export const words = {
  coilInductance: { means: 'How strongly a coil’s primary winding resists a change of its current.', measure: 'From the slope of current over time on an oscilloscope: voltage over slope.' },
  coilResistance: { means: 'Resistance of the coil’s primary winding with its wires.', measure: 'Voltage across the circuit over current, four wires, warm.' },
  coilCurrent: { means: 'Current in the primary winding at the end of charging.', measure: 'Current clamp and oscilloscope.' },
  coilVoltage: { means: 'Voltage between the coil’s feed and earth while it charges.', measure: 'Meter at the coil’s plug, engine hot, all loads on.' },
  driverDrop: { means: 'Voltage that the switch of the coil keeps for itself.', measure: 'Oscilloscope across the switch while it is on.' },
  chargeTime: { means: 'Time that the coil must be on to reach the wanted current.', measure: 'Current clamp and oscilloscope.' },
  chargeWindow: { means: 'Time there is to charge: from the end of one spark to the next.', measure: 'Worked out from shaft speed.' },
  burnTime: { means: 'Time for which the spark burns.', measure: 'Oscilloscope on the coil’s primary, under load.' },
  sparkPeriod: { means: 'Time from one spark of a coil to its next.', measure: 'Worked out from shaft speed.' },
  coilEnergy: { means: 'Energy in the coil when its switch opens.', measure: 'Worked out from inductance and current.' },
  energyShare: { means: 'Energy in the coil at the spark over the energy at the current wanted.', measure: 'A current clamp on the coil’s supply: square of the ratio of currents.' },
  coilLayout: { means: 'Whether a coil serves one plug or plugs of both rotors.', measure: 'Follow the leads.' },
  sparksPerTurn: { means: 'How often a coil fires in one turn of the shaft.', measure: 'Follow the leads: once for each rotor it serves.' },
  coilCount: { means: 'Coils on the engine.', measure: 'Count them.' },
  alternatorSpeed: { means: 'Speed at which the alternator turns.', measure: 'Shaft speed times pulley ratio.' },
  alternatorCurrent: { means: 'Current that the alternator can give.', measure: 'Current clamp on its lead with every load on and the battery low.' },
  alternatorCurve: { means: 'Current of an alternator over its own speed, at constant voltage.', measure: 'The maker’s curve; a test bench for one that has none.' },
  pulleyRatio: { means: 'Diameter of the shaft’s pulley over that of the alternator.', measure: 'Calliper over the belt’s working line on both.' },
  alternatorTemperature: { means: 'Temperature of the air that the alternator draws in.', measure: 'Thermocouple at its back after ten minutes’ idle.' },
  outputShare: { means: 'Part of the rated current that a warm alternator still gives.', measure: 'The maker’s hot curve over its cold one.' },
  loadCurrent: { means: 'Mean current of one load while the engine runs.', measure: 'Current clamp on its wire.' },
  electricLoad: { means: 'Current of all loads together.', measure: 'Current clamp on alternator and battery leads.' },
  primaryCount: { means: 'Injectors that pulse at idle: the primaries.', measure: 'Count them.' },
  wireCurrent: { means: 'Current that the wire carries.', measure: 'Current clamp.' },
  wireLength: { means: 'Length of copper that the current passes, there and back.', measure: 'Tape along the loom.' },
  wireArea: { means: 'Copper section of the wire.', measure: 'Printed on the wire; or strands counted and one measured.' },
  wireTemperature: { means: 'Temperature of the copper.', measure: 'Thermocouple under the sleeve.' },
  wireResistance: { means: 'Resistance of the wire from end to end.', measure: 'Drop over current, four wires.' },
  wireDrop: { means: 'Voltage that is lost along the wire.', measure: 'Meter from one end of the wire to the other, load on.' },
  wireHeat: { means: 'Heat that the wire makes of the current.', measure: 'Worked out from drop and current.' },
} satisfies WordsFor<typeof quantities>

/** Why each field starts where it does. */
export const reasons = {
  inductance: 'An invented coil of middle size: ask your coil’s maker.',
  resistance: 'An invented winding with its wires: measure yours warm.',
  wantedCurrent: 'A middle figure for a strong inductive coil: common practice, no source.',
  voltage: 'A charging system in order, warm: common practice, no source. Coils, pumps and injectors all read this one; wiring is counted apart.',
  driver: 'About what a transistor switch keeps: common practice, no source.',
  burn: 'Sparks under load burn about a millisecond: common practice, no source.',
  layout: 'A coil for each plug leaves the most time: common on two-rotor builds.',
  coils: 'Two rotors with two plugs each, a coil for each.',
  alternator: 'An invented alternator of 100 A: enter your maker’s curve.',
  pulley: 'A common size of pulleys: measure yours.',
  ratedAir: 'The air temperature of the rating test in ISO 8854.',
  hotAir: 'A hot engine bay at a standstill: common practice, no source.',
  hotShare: 'About a sixth is lost hot: common practice, no source; ask for the hot curve.',
  idleAir: 'A hot engine bay at a standstill: put a thermocouple there.',
  pumps: 'An invented pair of pumps at idle pressure: clamp yours.',
  fans: 'An invented fan at part speed: clamp yours.',
  controller: 'Controller, sensors and relays: common practice, no source; clamp yours.',
  lights: 'Invented diode lamps: older lamps take twice as much.',
  cabin: 'Blower at low speed: common practice, no source; clamp yours.',
  injectorCurrent: 'About what a high-impedance injector takes while open: voltage over resistance.',
  injectors: 'One primary for each of two rotors.',
} satisfies Reasons<typeof fields>
