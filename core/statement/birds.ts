// core/statement/birds.ts: the individuals of a flock statement: parents, founders, readings.
import { type Genome, isSingle } from '../engine/genome.ts'
import type { Bird, Prior } from '../engine/pedigree.ts'
import { type Reading, readGenotype, readState, type Trait } from '../engine/trait.ts'
import type { Sex } from '../vocabulary.ts'
import type { Complain } from './fault.ts'
import { checkChances, genotypeCode, genotypeHint, locusNumber } from './genome.ts'
import type { Statement } from './schema.ts'

type Told = Statement['individuals'][number]
type Path = readonly (string | number)[]
type Book = {
  readonly genome: Genome
  readonly traits: readonly Trait[]
  readonly told: readonly Told[]
  readonly places: Places
  readonly complain: Complain
}

/** Where each bird stands, by id, and who stands as a sire or as a dam. */
type Places = {
  readonly of: ReadonlyMap<string, number>
  readonly sires: ReadonlySet<string>
  readonly dams: ReadonlySet<string>
}

const placesOf = (told: readonly Told[]): Places => ({
  of: new Map(told.map(({ id }, i): [string, number] => [id, i]).toReversed()),
  sires: new Set(told.flatMap(({ sire }) => sire ?? [])),
  dams: new Set(told.flatMap(({ dam }) => dam ?? [])),
})

/**
 * In the order told. Where only one parent of a bird is named, the other becomes a founder of its own, put
 * at the end; a bird of unknown sex that stands as a parent has the sex of its part.
 */
export function readBirds(
  statement: Statement,
  genome: Genome,
  traits: readonly Trait[],
  complain: Complain,
): readonly Bird[] {
  const told = statement.individuals
  const places = placesOf(told)
  const book = { genome, traits, told, places, complain }
  const unnamed: Bird[] = []
  const someone = (sex: Sex, of: Told): number => {
    unnamed.push({ id: `the unnamed ${sex === 'M' ? 'sire' : 'dam'} of ${of.id}`, sex, readings: [] })
    return told.length + unnamed.length - 1
  }
  const birds = told.map((bird, i): Bird => {
    const path = ['individuals', i]
    if (places.of.get(bird.id)! < i) complain([...path, 'id'], `"${bird.id}" stands twice`)
    const sex = sexOf(bird, places)
    const parents =
      bird.sire || bird.dam
        ? {
            sire: bird.sire ? parentNumber(book, bird.sire, 'sire', path) : someone('M', bird),
            dam: bird.dam ? parentNumber(book, bird.dam, 'dam', path) : someone('F', bird),
          }
        : undefined
    return {
      id: bird.id,
      sex,
      parents,
      prior: readPrior(book, bird, sex, path),
      readings: readReadings(book, bird, sex, path),
    }
  })
  checkAncestry(birds, complain)
  return [...birds, ...unnamed]
}

const sexOf = ({ id, sex }: Told, { sires, dams }: Places): Sex | 'U' => {
  if (sex !== 'U') return sex
  if (sires.has(id)) return 'M'
  return dams.has(id) ? 'F' : 'U'
}

function parentNumber({ told, places, complain }: Book, id: string, part: 'sire' | 'dam', path: Path): number {
  const number = places.of.get(id) ?? -1
  const wrong = part === 'sire' ? 'F' : 'M'
  if (number < 0) complain([...path, part], `no individual "${id}"`)
  else if (told[number]!.sex === wrong)
    complain(
      [...path, part],
      `"${id}" is a ${wrong === 'F' ? 'hen (F) and cannot be a sire' : 'cock (M) and cannot be a dam'}`,
    )
  else if (told[number]!.sex === 'U' && places[part === 'sire' ? 'dams' : 'sires'].has(id))
    complain([...path, part], `"${id}" stands as a sire in one place and as a dam in another`)
  return Math.max(number, 0)
}

/** Birds are settled once their parents are; a bird that never is descends from itself, or from one that does. */
function checkAncestry(birds: readonly Bird[], complain: Complain): void {
  const parentsOf = (bird: number): readonly number[] =>
    Object.values(birds[bird]!.parents ?? {}).filter((parent) => parent < birds.length)
  const open = birds.map((_, bird) => parentsOf(bird).length)
  const chicks: number[][] = birds.map(() => [])
  open.forEach((_, bird) => parentsOf(bird).forEach((parent) => chicks[parent]!.push(bird)))
  const settled = open.flatMap((parents, bird) => (parents === 0 ? [bird] : []))
  for (const bird of settled) for (const chick of chicks[bird]!) if ((open[chick]! -= 1) === 0) settled.push(chick)
  if (settled.length === birds.length) return
  let loop = open.findIndex((parents) => parents > 0)
  for (const climbed = new Set<number>(); !climbed.has(loop);) {
    climbed.add(loop)
    loop = parentsOf(loop).find((parent) => open[parent]! > 0)!
  }
  complain(['individuals', loop], `"${birds[loop]!.id}" stands among its own ancestors`)
}

function readPrior(book: Book, bird: Told, sex: Sex | 'U', path: Path): ReadonlyMap<number, Prior> | undefined {
  const { genome, complain } = book
  const founder = !bird.sire && !bird.dam
  if (!founder && bird.prior?.length)
    complain([...path, 'prior'], `only a founder has a prior, and "${bird.id}" has parents`)
  const priors = new Map<number, Prior>()
  ;(bird.prior ?? []).forEach(({ group, dist }, i) => {
    const at = [...path, 'prior', i]
    if (genome.groups[group] === undefined)
      return complain([...at, 'group'], `no group ${group}; there are ${genome.groups.length}, counted from 0`)
    if (priors.has(group)) complain([...at, 'group'], 'this group has a prior already')
    if (sex === 'U' && genome.groups[group].on === 'Z') complain(at, 'on the Z a prior needs a bird of known sex')
    checkChances(
      dist.map(({ p }) => p),
      [...at, 'dist'],
      complain,
    )
    priors.set(
      group,
      dist.map(({ dip, p }, d) => ({ strands: readDip(book, group, sex, dip, [...at, 'dist', d, 'dip']), p })),
    )
  })
  const bare = genome.groups.findIndex(
    ({ loci }, group) => !priors.has(group) && loci.some((locus) => !genome.loci[locus]!.freqs),
  )
  if (founder && bare >= 0) {
    const locus = genome.loci[genome.groups[bare]!.loci.find((number) => !genome.loci[number]!.freqs)!]!
    complain(
      path,
      `"${bird.id}" has no parents and no prior for group ${bare}, and locus "${locus.id}" has no freqs to go by`,
    )
  }
  return priors.size > 0 ? priors : undefined
}

function readDip(
  { genome, complain }: Book,
  group: number,
  sex: Sex | 'U',
  dip: readonly (readonly string[])[],
  path: Path,
): readonly (readonly number[])[] {
  const { on, loci } = genome.groups[group]!
  const copies = sex !== 'U' && isSingle(on, sex) ? 1 : 2
  if (dip.length !== copies) complain(path, copies === 1 ? 'a hen has one haplotype on the Z' : 'want two haplotypes')
  return dip.map((strand, s) => {
    if (strand.length !== loci.length)
      complain([...path, s], `want ${loci.length} alleles, one for each locus of the group`)
    return loci.map((locus, i) => {
      const { id, alleles } = genome.loci[locus]!
      const allele = alleles.indexOf(strand[i] ?? '')
      if (allele < 0 && strand.length === loci.length)
        complain([...path, s, i], `"${strand[i]}" is no allele of "${id}"`)
      return Math.max(allele, 0)
    })
  })
}

function readReadings({ genome, traits, complain }: Book, bird: Told, sex: Sex | 'U', path: Path): readonly Reading[] {
  const genotypes = Object.entries(bird.genotype ?? {}).map(([symbol, text]) => {
    const at = [...path, 'genotype', symbol]
    const number = locusNumber(genome.loci, symbol, at, complain)
    const locus = genome.loci[number]!
    const code =
      sex === 'U' ? (genotypeCode(locus, text, 'M') ?? genotypeCode(locus, text, 'F')) : genotypeCode(locus, text, sex)
    if (code === undefined && locus.id === symbol)
      complain(at, `"${text}" cannot be: ${genotypeHint(locus, sex === 'F' ? 'F' : 'M')}`)
    return readGenotype(number, code ?? 0, `${symbol}: ${text}`)
  })
  const states = Object.entries(bird.phenotype ?? {}).flatMap(([name, state]) => {
    const at = [...path, 'phenotype', name]
    const trait = traits.find(({ id }) => id === name)
    if (trait === undefined) return complain(at, `no trait "${name}"`) ?? []
    const number = trait.states.indexOf(state)
    if (number < 0) complain(at, `"${state}" is no state of "${name}"; there are ${trait.states.join(', ')}`)
    return [readState(trait, Math.max(number, 0))]
  })
  return [...genotypes, ...states]
}
