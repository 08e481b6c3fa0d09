import type { Entry } from '../islands/search/find.ts'

/** Pages that are no article and no calculator, with other words for them. */
export const pages: readonly Entry[] = [
  { kind: 'page', title: 'Build sheet', url: 'build/', also: 'my car engine numbers save export import file' },
  { kind: 'page', title: 'Margins', url: 'margins/', also: 'what gives out first short tight holds weakest link report' },
  { kind: 'page', title: 'Speed sweep', url: 'sweep/', also: 'curves over rpm power torque' },
  { kind: 'page', title: 'Symptoms', url: 'symptoms/', also: 'fault trouble sign problem mistakes' },
  { kind: 'page', title: 'Checked against', url: 'checked-against/', also: 'validation proof published cases tests' },
  { kind: 'page', title: 'How far to trust this', url: 'how-far-to-trust/', also: 'accuracy confidence model leaves out error wrong' },
  { kind: 'page', title: 'Sources', url: 'sources/', also: 'references books papers bibliography' },
  { kind: 'page', title: 'Cautions', url: 'reference/cautions/', also: 'safety danger law legal' },
  { kind: 'page', title: 'Map workshop', url: 'maps/', also: 'map workshop trace bring in own turbo map' },
  { kind: 'page', title: 'Two turbochargers', url: 'turbochargers/', also: 'turbo choose size compare' },
  { kind: 'page', title: 'Chance', url: 'chance/', also: 'tolerance spread probability scatter' },
  { kind: 'page', title: 'Two builds', url: 'compare/', also: 'compare side by side difference' },
  { kind: 'page', title: 'First build in ten steps', url: 'first-build/', also: 'begin start plan path beginner checklist' },
  { kind: 'page', title: 'Before first start', url: 'before-first-start/', also: 'checklist first start fire up prime oil pressure cranking hand-over' },
  { kind: 'page', title: 'Licences', url: 'licences/', also: 'open source libraries' },
  { kind: 'page', title: 'On this device', url: 'on-this-device/', also: 'offline download without network install remove version' },
  { kind: 'page', title: 'Track session', url: 'session/', also: 'laps heat soak circuit temperatures' },
  { kind: 'page', title: 'Log check', url: 'log/', also: 'log file data csv compare prediction' },
  { kind: 'page', title: 'Build record', url: 'record/', also: 'clearances torques measured hand-over' },
  { kind: 'page', title: 'Report', url: 'report/', also: 'print pdf customer owner' },
  { kind: 'page', title: 'Hand-over', url: 'two-stages/', also: 'staging secondary injectors' },
  { kind: 'page', title: 'Which oil', url: 'which-oil/', also: 'grade viscosity clearance' },
  { kind: 'page', title: 'Mix card', url: 'mix-card/', also: 'premix ratio can' },
  { kind: 'page', title: 'Tables', url: 'tables/', also: 'hose oil fuel materials units' },
]
