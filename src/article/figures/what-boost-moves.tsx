import { setEntry, valueAt, type Sheet as Build } from '@trochoid/compute/build/sheet.ts'
import { boostTargetCurve } from '@trochoid/compute/boost/fields.ts'
import { boostPressure, power } from '@trochoid/compute/engine/quantities.ts'
import { demoPoint } from '@trochoid/compute/build/demo.ts'
import { bar } from '@trochoid/compute/quantity/si.ts'
import { Moves, movesTable, turned } from './decision/Moves.tsx'
import { movedLinks, type Moved } from './decision/moved.ts'
import { figure } from './figure.ts'
import { shown } from './plot/shown.ts'

type Data = { readonly moved: readonly Moved[]; readonly power: number | undefined; readonly more: number | undefined }
const rise = bar(0.3)

/** The same sheet with its whole boost curve lifted. */
function lifted(sheet: Build): Build {
  const curve = valueAt(sheet, boostTargetCurve)
  return curve ? setEntry(sheet, boostTargetCurve.path, { ...sheet.entries[boostTargetCurve.path], value: { x: curve.x, y: curve.y.map((y) => y + rise) } }) : sheet
}

export default figure<Data>({
  title: 'What a little more boost asks of everything else',
  beside: (sheet) => [lifted(sheet)],
  from: ({ point, weighed, beside, weighedBeside }) => ({ moved: movedLinks(weighed, weighedBeside[0] ?? [], 10), power: point['engine.power'], more: beside[0] && demoPoint(beside[0])['engine.power'] }),
  summary({ moved, power: now, more }, system) {
    const p = shown(power, system)
    const gain = now === undefined || more === undefined ? '' : ` Greatest power goes from ${p.say(now)} to ${p.say(more)}, in this model and with nothing said of knock.`
    return `The whole boost target is lifted by ${shown(boostPressure, system).say(rise, 2).replace(/ gauge$/, '')}, nothing else is touched, and the build is solved again.${gain} ${turned(moved)} Shown are the links that move, those with least left first.`
  },
  Picture: ({ data, system }) => (data.moved.length > 0 ? <Moves of={data.moved} system={system} says="Margins before and after the boost target is lifted, with the limit as an upright line." /> : null),
  table: ({ moved }, system) => movesTable(moved, system),
})
