// test/bench/engine.bench.ts: times of the inheritance engine beside those of other programs. Run: npm run bench -- engine. No limits here.
// The figures of the other programs were measured on a machine of this kind (AMD EPYC, 2 cores, Node 20).
import { do_not_optimize, measure } from 'mitata'
import { linkageGroups } from '../../core/data/linkage.ts'
import { loci } from '../../core/data/loci.ts'
import { type Block, fullBlocks, topClasses } from '../../core/engine/blocks.ts'
import { chickGroups } from '../../core/engine/cross.ts'
import { askEverybody } from '../../core/engine/everybody.ts'
import { doubles } from '../../core/engine/doubles.ts'
import { further } from '../../core/engine/further.ts'
import { askCarries } from '../../core/engine/item.ts'
import type { Mating } from '../../core/engine/mating.ts'
import type { Pedigree } from '../../core/engine/pedigree.ts'
import { budgetCells } from '../../core/engine/outcome.ts'
import { plan } from '../../core/engine/plan.ts'
import { prepare } from '../../core/engine/prepare.ts'
import { chanceFor, stand, type Standing } from '../../core/engine/stand.ts'
import { readState } from '../../core/engine/trait.ts'
import { answerStatement } from '../../core/statement.ts'
import type { Genotype, LinkageGroup, Locus } from '../../core/vocabulary.ts'
import { closedFlock, type FlockShape, genome, white } from '../closedFlock.ts'
import stored from '../data/statements.json' with { type: 'json' }
import { everyGamete } from './gametes.ts'

type Row = readonly [what: string, here: string, wanted: string, elsewhere: string]
const rows: Row[] = []
const print = (line: string): void => void process.stdout.write(`${line}\n`)
const time = (ns: number): string =>
  ns < 1e3 ? `${ns.toFixed(0)} ns` : ns < 1e6 ? `${(ns / 1e3).toFixed(1)} us` : `${(ns / 1e6).toFixed(2)} ms`

/** Warm time: the best run, and the one that half of the runs do not exceed. */
const warm = { min_cpu_time: 1e9, warmup_threshold: 1e10, warmup_samples: 60 }
type Timed = { readonly best: number; readonly half: number }
async function timed(run: () => unknown): Promise<Timed> {
  const { min, p50 } = await measure(() => do_not_optimize(run()), warm)
  return { best: min, half: p50 }
}
const both = ({ best, half }: Timed): string => `${time(best)} / ${time(half)}`
const row = async (what: string, run: () => unknown, wanted: string, elsewhere: string): Promise<void> => {
  rows.push([what, both(await timed(run)), wanted, elsewhere])
}

// Crosses.

const book: Readonly<Record<string, Locus>> = loci
const apart = (n: number): readonly LinkageGroup[] =>
  linkageGroups.filter(({ on, loci }) => on === 'A' && loci.length === 1).slice(0, n)
const unlike = (groups: readonly LinkageGroup[]): Genotype =>
  Object.fromEntries(
    groups.map(({ loci: [locus] }) => [locus!, [book[locus!]!.alleles[0]!, book[locus!]!.alleles[1]!]]),
  )
const crossOf = (n: number): readonly [Mating, readonly LinkageGroup[]] => {
  const groups = apart(n)
  const parent = { genotype: unlike(groups) }
  return [{ sire: parent, dam: parent }, groups]
}
/** Shows the first allele or does not: two classes a locus. */
const phenotypes = ([mating, groups]: readonly [Mating, readonly LinkageGroup[]]): readonly Block<boolean>[] =>
  chickGroups(mating, groups).map(({ loci: [locus], M }) => {
    const shows = M.reduce(
      (sum, { genotype, p }) => sum + (genotype[locus!]!.includes(book[locus!]!.alleles[0]!) ? p : 0),
      0,
    )
    return [
      { value: true, p: shows },
      { value: false, p: 1 - shows },
    ]
  })

const [three, ten, sixteen] = [crossOf(3), crossOf(10), crossOf(16)]
const threeBlocks = phenotypes(three)
await row('3 loci, the cross', () => chickGroups(...three), 'under 5 us', '0.26 us (tables made beforehand, F2)')
await row('3 loci, all classes of phenotype', () => fullBlocks(phenotypes(three)), '', '')
await row('10 loci by blocks', () => phenotypes(ten), '', '1.0 us (8 loci, tables beforehand)')
await row('10 loci, every gamete in typed arrays', () => everyGamete(10), '', '1.2 ms')
await row('16 loci by blocks', () => phenotypes(sixteen), 'under 50 us', '1.4 us (tables beforehand), 5 s every gamete')
await row(
  '16 loci, the 20 likeliest classes',
  () => [...take(topClasses(phenotypes(sixteen)), 20)],
  '',
  '0.37 ms (all 65 536)',
)
await row(
  'whole catalogue, one cross of 33 groups',
  () => chickGroups(sixteen[0], linkageGroups),
  'a few us a group',
  '',
)
if (threeBlocks.length !== 3) throw new Error('three loci make three blocks')

function* take<T>(from: Iterable<T>, n: number): Generator<T> {
  let left = n
  for (const one of from) {
    if (left === 0) return
    left -= 1
    yield one
  }
}

// Flocks of five hundred.

const item = askCarries(genome, 0, 1)
const everybody = (flock: Pedigree) => (): unknown => askEverybody(flock, item, 'yes', doubles)
const statement = (id: string) => (): unknown => answerStatement(stored.largePedigrees.find((one) => one.id === id))
const storedFlock = (id: string): Pedigree => {
  const { individuals } = stored.largePedigrees.find((one) => one.id === id)!
  const number = new Map(individuals.map((bird, i) => [bird.id, i]))
  return {
    genome,
    birds: individuals.map(({ id, sex, sire, dam, phenotype }) => ({
      id,
      sex: sex === 'F' ? 'F' : 'M',
      parents: sire === null || dam === null ? undefined : { sire: number.get(sire)!, dam: number.get(dam)! },
      readings: phenotype === undefined ? [] : [readState(white, phenotype.white === 'white' ? 1 : 0)],
    })),
  }
}
const made = (shape: Omit<FlockShape, 'birds'>, birds = 500): Pedigree => closedFlock({ birds, ...shape }, 1)
const two = { cocks: 2, hens: 6, chicks: 25 }
const four = { cocks: 4, hens: 12, chicks: 50 }
const fourTight = { cocks: 4, hens: 12, chicks: 25 }

await row(
  '500 birds, no loops, all birds',
  everybody(storedFlock('p500t')),
  'under 5 ms',
  '9 ms (bucket tree, Node 24), 19 s (mlink)',
)
await row(
  '500 birds, closed flock 2 x 6, all birds',
  everybody(storedFlock('p500f')),
  'under 20 ms',
  '34-51 ms (bucket tree); mlink refuses',
)
await row('500 birds, closed flock 4 x 12, 50 chicks a year', everybody(made(four)), 'under 100 ms', 'not run')
await row('500 birds, closed flock 4 x 12, 25 chicks a year', everybody(made(fourTight)), 'under 100 ms', 'not run')
await row(
  '50 birds, closed flock, JSON in, fractions too',
  statement('p50f'),
  '',
  '13 ms a bird (fractions, another language)',
)

// One reading more.

function standing(flock: Pedigree): Standing<number, Float64Array, number> {
  const outcome = stand(flock, item, doubles)
  if (outcome.kind !== 'answer') throw new Error(outcome.kind)
  return outcome.answer
}
/** A reading on one unread bird after another, all over the flock, and the bird in the middle asked after each. */
async function oneMore(name: string, flock: Pedigree): Promise<void> {
  const unread = flock.birds.flatMap(({ readings }, bird) => (readings.length === 0 ? [bird] : []))
  const asked = flock.birds.length / 2
  const first = await timed(() => chanceFor(standing(flock), asked, 'yes'))
  const before = standing(flock)
  chanceFor(before, asked, 'yes') // what was asked before the further reading
  let turn = 0
  const again = (): number => {
    turn = (turn + 7) % unread.length
    const after = further(before, unread[turn]!, readState(white, 0))
    return after.kind === 'answer' ? chanceFor(after.answer, asked, 'yes') : Number.NaN
  }
  const next = await timed(again)
  rows.push([
    `${name}: one reading more, one bird asked`,
    `${both(next)} (half to half: ${(next.half / first.half).toFixed(3)} of ${time(first.half)})`,
    'under a tenth',
    '',
  ])
}
await oneMore('500 birds, 2 x 6', storedFlock('p500f'))
await oneMore('500 birds, no loops', storedFlock('p500t'))
await oneMore('500 birds, 4 x 12', made(four))

print('| what | here, warm: best / half of the runs | wanted | elsewhere |')
print('|---|---|---|---|')
for (const cells of rows) print(`| ${cells.join(' | ')} |`)

// How it grows.

print('\n| birds | closed flock | table cells | carrier odds of all birds |')
print('|---|---|---|---|')
for (const [name, shape] of [
  ['2 x 6', two],
  ['4 x 12', four],
] as const)
  for (const birds of [60, 125, 250, 500, 1000, 2000]) {
    const flock = made(shape, birds)
    const asked = { uses: item.uses, birds: flock.birds.map((_, bird) => bird), together: [] }
    const prepared = prepare(flock, asked, doubles, Infinity)
    if (prepared.kind !== 'answer') throw new Error(prepared.kind)
    const { cells } = plan(prepared.answer.model.sizes, prepared.answer.model.scopes)
    const odds = cells > budgetCells ? 'over the budget, not worked' : both(await timed(everybody(flock)))
    print(`| ${birds} | ${name} | ${cells.toLocaleString('en')} | ${odds} |`)
  }
