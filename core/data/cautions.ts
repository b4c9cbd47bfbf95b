// core/data/cautions.ts: what a keeper should not find out too late: one short sentence each, and which of several comes first.
import type { Caution } from '../answer.ts'
import type { Citation, Genotype } from '../vocabulary.ts'

type CautionText = {
  readonly topic: Caution['topic']
  /** Higher speaks first. 5 chicks die of the mating; 4 chicks suffer; 3 birds nobody has a place for; 2 disease and law; 1 the rest. */
  readonly weight: 1 | 2 | 3 | 4 | 5
  readonly text: string
  readonly sources: readonly Citation[]
}

const practice: Citation = { ref: 'keepers and breed clubs', status: 'common practice' }

/** Generic on purpose: local rules and a vet stand above all of it. */
export const cautions = {
  creeper: {
    topic: 'lethal',
    weight: 5,
    text: 'Both birds short-legged: a quarter of the embryos die in the shell; put short to long and none do.',
    sources: [{ ref: 'OMIA:000006-9031; The lethal nature of the Creeper variation in the domestic fowl', status: 'read' }],
  },
  tufts: {
    topic: 'lethal',
    weight: 5,
    text: 'Both birds tufted: a quarter of the embryos die in the shell, and tufts cost chicks even singly; put tufted to clean-faced.',
    sources: [{ ref: 'J. Heredity 72:121-124, 1981 (ear-tufts)', status: 'read' }],
  },
  frizzle: {
    topic: 'welfare',
    weight: 4,
    text: 'Frizzle to frizzle: a quarter hatch over-frizzled, with brittle, half-bare feather; put frizzle to smooth.',
    sources: [{ ref: 'an encyclopaedia article on the Frizzle', status: 'read' }, practice],
  },
  crest: {
    topic: 'welfare',
    weight: 4,
    text: 'Crested to crested can give open skulls under the crest; handle such heads gently and breed on from sound ones.',
    sources: [
      { ref: 'OMIA:001746-9031 (cerebral hernia); J. Exp. Zool. B 2012; Frontiers Ecol. Evol. 2024', status: 'read' },
    ],
  },
  rumpless: {
    topic: 'welfare',
    weight: 4,
    text: 'Both birds rumpless: fewer eggs are fertile and a few more chicks die late in the shell; put rumpless to tailed.',
    sources: [{ ref: 'a French breed club of the Araucana, page on taillessness', status: 'read' }],
  },
  heavyCock: {
    topic: 'size',
    weight: 4,
    text: 'He weighs twice the hen or more and can tear her back: watch her, saddle her, rest her from him; keep him off bantams.',
    sources: [practice],
  },
  smallCock: {
    topic: 'size',
    weight: 1,
    text: 'The cock is much smaller than the hens: no harm to them, but fewer eggs may be fertile where he cannot reach well.',
    sources: [practice],
  },
  surplusMales: {
    topic: 'surplus-males',
    weight: 3,
    text: 'Half of every hatch is cockerels: have homes or the pot planned before you set, and know your local law on killing at home.',
    sources: [
      { ref: 'EU notification 2021/0013/D and Bundesverwaltungsgericht 13 June 2019 (male chicks of laying lines, Germany)', status: 'read' },
      { ref: 'judgement of the project: none of the texts read says how it binds a hobby keeper', status: 'from memory' },
    ],
  },
  inbreeding: {
    topic: 'inbreeding',
    weight: 2,
    text: 'Close kin mated for several generations lose hatch and vigour; bring in an unrelated cock now and then.',
    sources: [practice],
  },
  meatStrains: {
    topic: 'strains',
    weight: 2,
    text: 'The Cornish Cross meat bird is bred this way, but from broiler strains of its own; from breed stock expect a slower, lighter table bird.',
    sources: [practice],
  },
  newStock: {
    topic: 'disease',
    weight: 2,
    text: 'Keep bought-in birds apart for about 30 days before they join the flock, and ask where they were tested.',
    sources: [
      { ref: 'Extension Foundation, avian influenza course', status: 'read' },
      { ref: 'Washington State Department of Agriculture, page on flock certification', status: 'read' },
    ],
  },
  hygiene: {
    topic: 'hygiene',
    weight: 1,
    text: 'Hang a heat lamp so that it cannot fall, and wash hands after chicks, small children above all.',
    sources: [{ ref: 'CDC media alert, 23 May 2024 (Salmonella from backyard poultry)', status: 'read' }, practice],
  },
  byLaws: {
    topic: 'by-laws',
    weight: 1,
    text: 'Look up local rules before you raise cockerels: flocks may have to be registered, and crowing may be barred.',
    sources: [
      { ref: 'council pages: Loddon, North Northamptonshire (registration); Arun, Breckland (leases, crowing)', status: 'read' },
    ],
  },
  health: {
    topic: 'health',
    weight: 2,
    text: 'For a sick bird ask a vet; I only know breeding.',
    sources: [{ ref: 'house rule of this project', status: 'common practice' }],
  },
} as const satisfies Record<string, CautionText>

export type CautionId = keyof typeof cautions

const byWeight = (due: readonly CautionId[]): readonly CautionId[] =>
  [...new Set(due)].sort((one, other) => cautions[other].weight - cautions[one].weight)

const shown = (id: CautionId): Caution => ({ topic: cautions[id].topic, text: cautions[id].text })

/** At most one: the weightiest of those due; of equals, the one named first. */
export const cautionFor = (due: readonly CautionId[]): readonly Caution[] => byWeight(due).slice(0, 1).map(shown)

/** All of those due, weightiest first: for a keeper who asks about welfare or the law. */
export const cautionsFor = (due: readonly CautionId[]): readonly Caution[] => byWeight(due).map(shown)

/** Who says so, for the cautions shown. */
export const cautionSources = (due: readonly CautionId[]): readonly Citation[] => due.flatMap((id) => cautions[id].sources)

const hurtsTwice: readonly (readonly [CautionId, locus: string, allele: string])[] = [
  ['creeper', 'Cp', 'Cp'],
  ['tufts', 'Et', 'Et'],
  ['frizzle', 'F', 'F'],
  ['crest', 'Cr', 'Cr'],
  ['rumpless', 'Rp', 'Rp'],
]

/** Cautions due because both parents carry an allele that harms in a double dose, or, as the crest does, wherever it is kept. */
export const matingCautions = (sire: Genotype, dam: Genotype): readonly CautionId[] =>
  hurtsTwice.flatMap(([id, locus, allele]) =>
    sire[locus]?.includes(allele) && dam[locus]?.includes(allele) ? [id] : [],
  )
