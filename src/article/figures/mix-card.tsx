import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { premix, tank } from '@trochoid/compute/fuel/fields.ts'
import { oilDose, premixShare, tankVolume } from '@trochoid/compute/fuel/quantities.ts'
import { writeNumber } from '@trochoid/compute/quantity/write.ts'
import { figure } from './figure.ts'
import { shown } from './plot/shown.ts'
import { doseOf, marks, MixCard, type Card } from './tools/MixCard.tsx'

export default figure<Card | null>({
  title: 'Oil for each fill',
  moves: true,
  from({ sheet }) {
    const share = valueAt(sheet, premix), volume = valueAt(sheet, tank)
    return share === null || volume === null || !(share > 0) || !(volume > 0) ? null : { share, tank: volume }
  },
  summary(card, system) {
    if (!card) return 'This build has no oil in its fuel, or no tank: there is nothing to print.'
    return `As the build stands, ${shown(premixShare, system).say(card.share)} of oil: a whole tank of ${shown(tankVolume, system).say(card.tank)} takes ${shown(oilDose, system).say(doseOf(card.share, card.tank))}.`
  },
  Picture: ({ data, system }) => (data ? <MixCard card={data} system={system} /> : null),
  table(card, system) {
    const o = shown(oilDose, system), v = shown(tankVolume, system)
    return {
      head: ['Gauge before filling to the brim', v.head('Fuel that goes in'), o.head('Oil to pour in')],
      rows: card ? marks.map((part) => [part === 0 ? 'empty' : `${100 * part}\u202f%`, writeNumber(v.of(card.tank * (1 - part))), writeNumber(o.of(doseOf(card.share, card.tank * (1 - part))))]) : [],
    }
  },
})
