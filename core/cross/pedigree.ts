// core/cross/pedigree.ts: a bird as the keeper names it -> its pedigree up to founders, with every way a named hybrid may have been made.
import { breedNamed, lineOf } from '../breeds.ts'
import type { Parent } from '../engine/mating.ts'
import type { BirdRef, ToldGenotype } from '../question.ts'
import type { Genotype, Sex } from '../vocabulary.ts'
import { founder, impliesBlack, joined, type Choice, type Founder } from './founder.ts'

export type Pedigree =
  | { readonly kind: 'founder'; readonly founder: Founder }
  | { readonly kind: 'bred'; readonly sire: Pedigree; readonly dam: Pedigree; readonly told: Genotype }

/** One way the bird may have come about; weights add to 1. `as` says it, '' where there is only one way. */
export type Origin = { readonly pedigree: Pedigree; readonly weight: number; readonly as: string }

const idOf = (bird: BirdRef, sex: Sex): string =>
  [bird.name ?? '', bird.breed ?? '', bird.line ?? '', JSON.stringify(bird.genotype ?? {}), sex].join('/')

/** Told alleles as a reading on a cross-bred bird. */
const reading = (told: ToldGenotype | undefined): Genotype => told ?? {}

const blackGround: ToldGenotype = { E: ['E', 'E'] }

/**
 * @param ground genes to take where only genes are told, shared by both parents of a mating
 * @returns likeliest way first
 */
export function origins(bird: BirdRef, sex: Sex, ground: ToldGenotype = {}): readonly Origin[] {
  if (bird.cross) return bredFrom(bird.cross, bird.genotype, ground, '')
  const breed = bird.breed === undefined ? undefined : breedNamed(bird.breed)
  const made = breed?.madeFrom
  if (made)
    return made
      .flatMap(({ sire, dam, weight }) =>
        bredFrom(
          { sire: { breed: sire, ...lineIn(sire, bird.line) }, dam: { breed: dam, ...lineIn(dam, bird.line) } },
          bird.genotype,
          ground,
          made.length > 1 ? `${sire} on ${dam}` : '',
        ).map((origin) => ({
          ...origin,
          weight: origin.weight * weight,
        })),
      )
      .toSorted((a, b) => b.weight - a.weight)
  const told = { ...(breed ? {} : ground), ...bird.genotype }
  return [
    {
      pedigree: { kind: 'founder', founder: founder(idOf(bird, sex), sex, breed, bird.line, told) },
      weight: 1,
      as: '',
    },
  ]
}

const lineIn = (breed: string, line: string | undefined): { readonly line?: string } => {
  const parent = breedNamed(breed)
  const own = parent && lineOf(parent, line)
  return own ? { line: own.id } : {}
}

function bredFrom(
  cross: { readonly sire: BirdRef; readonly dam: BirdRef },
  told: ToldGenotype | undefined,
  ground: ToldGenotype,
  as: string,
): readonly Origin[] {
  const sires = origins(cross.sire, 'M', ground)
  const dams = origins(cross.dam, 'F', ground)
  return sires.flatMap((sire) =>
    dams.map((dam) => ({
      pedigree: { kind: 'bred' as const, sire: sire.pedigree, dam: dam.pedigree, told: reading(told) },
      weight: sire.weight * dam.weight,
      as: [as, sire.as, dam.as].filter(Boolean).join('; '),
    })),
  )
}

/** Black ground for a mating of which only genes are told and one acts on black. */
export const groundFor = (sire: BirdRef, dam: BirdRef): ToldGenotype => {
  const bare = [sire, dam].filter((bird) => !bird.breed && !bird.cross)
  return bare.some((bird) => impliesBlack(bird.genotype ?? {})) && bare.every((bird) => !bird.genotype?.['E'])
    ? blackGround
    : {}
}

export const foundersOf = (pedigree: Pedigree): readonly Founder[] =>
  pedigree.kind === 'founder' ? [pedigree.founder] : [...foundersOf(pedigree.sire), ...foundersOf(pedigree.dam)]

/** The pedigree with every doubt settled. */
export function settle(pedigree: Pedigree, settled: ReadonlyMap<string, Choice>): Parent {
  if (pedigree.kind === 'bred') {
    const cross = { sire: settle(pedigree.sire, settled), dam: settle(pedigree.dam, settled) }
    return Object.keys(pedigree.told).length > 0 ? { cross, genotype: pedigree.told } : { cross }
  }
  const { known, doubts } = pedigree.founder
  const genotype = joined([known, ...doubts.map(({ id, choices }) => (settled.get(id) ?? choices[0]!).genotype)])
  const phases = doubts.map(({ id }) => settled.get(id)?.phase).filter((phase) => phase !== undefined)
  return phases.length > 0 ? { genotype, phase: Object.assign({}, ...phases) } : { genotype }
}
