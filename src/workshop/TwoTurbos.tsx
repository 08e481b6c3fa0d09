import { at } from '@trochoid/compute/boost/point.ts'
import { responseTime } from '@trochoid/compute/boost/quantities.ts'
import type { Field } from '@trochoid/compute/build/field.ts'
import { compare } from '@trochoid/compute/comparison/compare.ts'
import type { Side } from '@trochoid/compute/comparison/side.ts'
import { at as cooling } from '@trochoid/compute/cooling/point.ts'
import { at as engine } from '@trochoid/compute/engine/point.ts'
import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { setEntry } from '@trochoid/compute/build/sheet.ts'
import type { CompressorMap, Quantity } from '@trochoid/compute/quantity/quantity.ts'
import { shownUnit, write, type System } from '@trochoid/compute/quantity/write.ts'
import { useEffect, useMemo, useState } from 'preact/hooks'
import onMap from '../article/figures/engine-on-map.tsx'
import { Choose } from '../islands/parts/Choose.tsx'
import { csv, saveFile } from '../islands/parts/files.ts'
import { useStore } from '../islands/parts/useStore.ts'
import { change } from '../state/build.ts'
import { maps } from '../state/maps.ts'
import { look } from '../state/solver/look.ts'
import { system as systemStore } from '../state/system.ts'
import { Asked } from './Asked.tsx'
import { invented } from './invented.ts'
import { figuresOf, timeUntilBoost, turboFields, turboLike, turboOf, withTurbo, type Figures, type Turbo } from './turbo.ts'

type Props = { first: Side; second: Side; fields: ReadonlyMap<string, Field> }
const words = ['First', 'Second'] as const
const pause = 250

/** The build with one turbocharger beside the same build with another: both on their maps, in figures and in words. */
export function TwoTurbos({ first, second, fields }: Props) {
  const system = useStore(systemStore)
  const own = useStore(maps)
  const [turbos, setTurbos] = useState<readonly [Turbo, Turbo]>([turboOf(first.sheet), turboOf(second.sheet)])
  const [sides, setSides] = useState<readonly [Side, Side]>([first, second])
  const [shaft, setShaft] = useState<number>((4000 * Math.PI) / 30)
  const [told, tell] = useState('')
  useEffect(() => {
    let late = false
    const timer = setTimeout(() => {
      const sheets = turbos.map((turbo, i) => (same(turbo, turboOf([first, second][i]!.sheet)) ? [first, second][i]!.sheet : withTurbo(first.sheet, turbo)))
      void Promise.all(sheets.map(async (sheet, i): Promise<Side> => (sides[i as 0 | 1].sheet === sheet ? sides[i as 0 | 1] : { sheet, ...(await look(sheet)) })))
        .then(([a, b]) => { if (!late) setSides([a!, b!]) })
    }, pause)
    return () => { late = true; clearTimeout(timer) }
  }, [turbos])
  const exchange = (i: 0 | 1, turbo: Turbo) => setTurbos((now) => (i === 0 ? [turbo, now[1]] : [now[0], turbo]))
  const library: Readonly<Record<string, CompressorMap>> = { ...own, ...invented }
  const chooseMap = (i: 0 | 1, id: string) => {
    const map = library[id]
    if (!map) return
    exchange(i, turboLike(turboOf(first.sheet), map))
  }
  const { says } = useMemo(() => compare(sides[0], sides[1], fields, system), [sides, system])
  const figures = useMemo(() => sides.map(figuresOf) as [Figures, Figures], [sides])
  const times = useMemo(() => sides.map((side) => timeUntilBoost(side, shaft)), [sides, shaft])
  const rows = rowsOf(figures, times, shaft, system)
  const use = (i: 0 | 1) => {
    const { map, numbers } = turbos[i]
    change((sheet) => Object.entries({ ...numbers, 'boost.compressorMap': map }).reduce((next, [path, value]) => setEntry(next, path, { value, from: 'guess' }), sheet))
    tell(`${turbos[i].name} is now the turbocharger of your build.`)
  }
  return (
    <>
      <div class="two no-print">
        {([0, 1] as const).map((i) => (
          <fieldset key={i}>
            <legend>{words[i]}: {turbos[i].name}</legend>
            <Choose id={`map-${i}`} label="Its compressor map" value={Object.keys(library).find((id) => library[id] === turbos[i].map || library[id]!.name === turbos[i].map.name) ?? ''} options={[...Object.entries(library).map(([id, { name }]) => [id, name] as const), ...(Object.values(library).some(({ name }) => name === turbos[i].map.name) ? [] : [['', turbos[i].map.name] as const])]} onChoose={(id) => chooseMap(i, id)} />
            {turboFields.map((field) => <Asked key={`${field.path} ${turbos[i].map.name} ${system}`} id={`${i}-${field.path.replace('.', '-')}`} of={{ ...field.shape, name: field.label ?? field.shape.name }} system={system} start={turbos[i].numbers[field.path]!} onValue={(value) => { if (value !== null) setTurbos((now) => { const next = { ...now[i], numbers: { ...now[i].numbers, [field.path]: value } }; return i === 0 ? [next, now[1]] : [now[0], next] }) }} />)}
            <button type="button" onClick={() => use(i)}>Use in my build</button>
          </fieldset>
        ))}
      </div>
      <p class="small soft no-print">When a map is chosen, turbine capacity and inertia follow by similarity of shape from the build’s own: a first guess. Put in what the maker states.</p>
      <div role="status">{told && <p class="small">{told}</p>}{says.length > 0 && <p class="answer">{says[0]}</p>}{says.slice(1).map((sentence) => <p key={sentence}>{sentence}</p>)}</div>
      <div class="two">{sides.map((side, i) => <OnMap key={i} side={side} name={turbos[i as 0 | 1].name} system={system} />)}</div>
      <div class="field no-print"><Asked id="step-at" of={{ ...shaftSpeed, name: 'The throttle opens at' }} system={system} start={shaft} onValue={(value) => { if (value !== null) setShaft(value) }} /></div>
      <div class="scroll" tabindex={0} role="group" aria-label="Both turbochargers in figures">
        <table>
          <thead><tr><th scope="col">At full throttle</th><th scope="col">{turbos[0].name}</th><th scope="col">{turbos[1].name}</th></tr></thead>
          <tbody>{rows.map(([name, a, b]) => <tr key={name}><th scope="row">{name}</th><td>{a}</td><td>{b}</td></tr>)}</tbody>
        </table>
      </div>
      <p class="small soft">Until boost is there both are taken to turn at a quarter of their map’s top speed line as the throttle opens, the exhaust to be at one temperature, and the wastegate shut. Below a map’s lowest line the reading is an estimate.</p>
      <div class="row no-print">
        <button type="button" onClick={() => saveFile('two-turbochargers.csv', 'text/csv', csv([['at full throttle', turbos[0].name, turbos[1].name], ...rows.map((r) => [...r])]))}>Save as CSV</button>
        <button type="button" onClick={() => print()}>Print</button>
      </div>
    </>
  )
}

const same = (a: Turbo, b: Turbo): boolean => a.map === b.map && turboFields.every(({ path }) => a.numbers[path] === b.numbers[path])

/** The engine's line over one of the maps, as the article on it draws it. */
function OnMap({ side: { sheet, solved, weighed }, name, system }: { side: Side; name: string; system: System }) {
  const data = onMap.from({ sheet, solved, point: {}, weighed, beside: [], weighedBeside: [] })
  return <figure><onMap.Picture data={data} system={system} /><figcaption>{name}. {onMap.summary(data, system)}</figcaption></figure>
}

type Row = readonly [name: string, a: string, b: string]
function rowsOf(figures: readonly [Figures, Figures], times: readonly (number | string)[], shaft: number, system: System): readonly Row[] {
  const say = (of: Quantity, value: number, figures = 3): string => write(value, of, shownUnit(of, system), figures)
  const row = (name: string, key: keyof Figures, of: Quantity): Row => {
    const [a, b] = figures.map((f) => { const one = f[key]; return one === null ? 'none in this sweep' : `${say(of, one.value)}${one.at === null ? '' : `, at ${say(shaftSpeed, one.at, 4)}`}` })
    return [name, a!, b!]
  }
  const [a, b] = times.map((t) => (typeof t === 'string' ? t : say(responseTime, t)))
  return [
    row('Boost reaches its target from', 'threshold', shaftSpeed),
    [`Nine tenths of it after the throttle opens at ${say(shaftSpeed, shaft, 4)}`, a!, b!],
    row('Nearest to surge', 'surge', at.surgeMargin.shape), row('Nearest to the right edge of the map', 'choke', at.chokeMargin.shape), row('Highest share of the permitted turbocharger speed', 'speed', at.topSpeedShare.shape),
    row('Highest charge temperature', 'charge', engine.charge.shape), row('Highest back-pressure ratio', 'back', engine.backPressureRatio.shape), row('Highest exhaust temperature', 'exhaust', cooling.exhaustTemperature.shape),
    row('Most power its compressors take', 'compressor', at.compressorPower.shape), row('Most engine power', 'power', engine.power.shape),
  ]
}
