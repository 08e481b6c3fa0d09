/** What is done before and at the first start, in order, in stages that end where one can still stop without harm. The names stand in the record and its print. */
export const startStages = [
  {
    id: 'bench', title: 'On the bench, before anything is poured in', steps: [
      ['written', 'Clearances, weights and torques written into the record, none outside what is expected'],
      ['turned', 'Turned by hand, plugs out: three turns of the shaft, even all the way'],
      ['actuator', 'Wastegate actuator tried with a hand pump'],
    ],
  },
  {
    id: 'fluids', title: 'Fluids, battery off', steps: [
      ['extinguisher', 'Fire extinguisher within reach, nobody beside flywheel or belts'],
      ['oil-filled', 'Oil filled, filter and cooler primed'],
      ['coolant-bled', 'Coolant filled and bled, cap on'],
      ['premix', 'Premix in the tank as the sheet says'],
    ],
  },
  {
    id: 'electrics', title: 'Battery on, engine still', steps: [
      ['sensors', 'Every sensor reads the air outside before the start'],
      ['controller', 'Injector data in the controller agree with the sheet'],
      ['limits', 'Limits set in the controller: speed, boost, temperatures, oil pressure'],
    ],
  },
  {
    id: 'fuel', title: 'Fuel under pressure, engine still', steps: [
      ['fuel-leak', 'Fuel system under pressure, engine off: no leak at any joint'],
      ['regulator', 'Regulator answers to its hose as the sheet says'],
    ],
  },
  {
    id: 'cranking', title: 'Cranking, fuel and spark off', steps: [
      ['cranked', 'Cranked without plugs until oil pressure stands'],
      ['timing', 'Ignition timing checked against the mark with a light'],
    ],
  },
  {
    id: 'start', title: 'The start and the first warming', steps: [
      ['started', 'Started: oil pressure within seconds, else stopped at once'],
      ['idle', 'Idle looked at against the sheet'],
      ['warm', 'Warm: thermostat has opened, fan has come on, both temperatures stand'],
      ['leaks', 'Warm: no leak of oil, coolant, fuel or exhaust'],
      ['retorque', 'Cold again: hot-side and clutch fasteners looked at again'],
    ],
  },
] as const

export type StartStep = (typeof startStages)[number]['steps'][number][0]
/** The line of the record that a step is. */
export const lineOfStep = (step: StartStep): string => `start-${step}`
