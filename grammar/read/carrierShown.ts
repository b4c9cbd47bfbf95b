// grammar/read/carrierShown.ts: which trait a debate is about, and what birds and chicks are said to show of it.
import { breedNamed, genesOf } from '../../core/breeds.ts'
import { traitsIn } from '../bird.ts'
import { traits } from '../words/traits.ts'
import { chicksCounted, isSpot, saidOfAll, type Chicks } from './chicks.ts'
import { isOf, isOfKin, type Trait } from './carrierKin.ts'
import type { Bird } from '../bird.ts'
import type { Reading } from '../reading.ts'
import type { Token } from '../token.ts'
import type { FlockBird, Tally } from '../../core/question.ts'
import type { Sex } from '../../core/vocabulary.ts'

export const partName = (sex: Sex | undefined): string => (sex === 'F' ? 'the hen' : 'the cock')

/** "hatched from a green egg, does she carry blue": the shell is meant. */
const isOfEggs = ({ scene, words }: Reading): boolean =>
  scene.goals.some((goal) => goal.endsWith('-eggs')) || words.some((word) => /^eggs?$/u.test(word))

/** Recessives that a breed is called by: "his mother was a Chocolate Orpington". */
const calledBy: ReadonlySet<string> = new Set(['lav', 'choc', 'mo', 'c', 'h'])
export function ofBreeds(tokens: readonly Token[]): readonly string[] {
  const named = tokens.flatMap((token) => (token.type === 'breed' ? (breedNamed(token.names[0]!) ?? []) : []))
  return Object.keys(traits).filter((id) =>
    named.some((breed) => {
      const gene = genesOf(breed)[traits[id]!.locus]
      return gene?.kind === 'fixed' && gene.allele === traits[id]!.allele && calledBy.has(gene.allele)
    }),
  )
}

/** The trait in question: what a bird is said to carry, else what the chicks show, else what is spoken of. */
export function traitOf(reading: Reading, birds: readonly Bird[]): Trait | undefined {
  const carried = birds.flatMap(({ saidOf }) => saidOf.carried.flatMap(({ what }) => traitsIn(what)))
  const spoken = reading.tokens.flatMap((token, i) =>
    reading.tokens[i - 1]?.type === 'carries' || token.type === 'trait' || token.type === 'gene'
      ? traitsIn([token])
      : [],
  )
  const counted = chicksCounted(reading.tokens)
    .flatMap(({ look }) => traitsIn(look))
    .filter((id) => traits[id]?.seen === false)
  const shown = reading.tokens.flatMap((token) =>
    token.type === 'colour' &&
    ['lavender', 'chocolate', 'white', 'mottled', 'frizzle', 'splash', 'mille fleur'].includes(token.colour)
      ? traitsIn([token])
      : [],
  )
  const named = [...carried, ...spoken, ...counted, ...shown, ...ofBreeds(reading.tokens)][0]
  const id = named === 'blue' && isOfEggs(reading) ? 'blue egg' : named
  const trait = id === undefined ? undefined : traits[id]
  if (!trait) return undefined
  return id === 'recessive white' &&
    !reading.words.includes('recessive') &&
    birds.some((bird) => carriesDominantWhite(bird))
    ? { allele: 'I', locus: 'I' }
    : { allele: trait.allele, locus: trait.locus }
}

function carriesDominantWhite({ ref }: Bird): boolean {
  const breed = ref.breed === undefined ? undefined : breedNamed(ref.breed)
  const gene = breed && genesOf(breed)['I']
  return gene?.kind === 'fixed' && gene.allele === 'I'
}

/** Does a bird show it, by the words said of it? */
export function shows({ saidOf, ref, sex }: Bird, { allele, locus }: Trait): boolean | undefined {
  if (locus === 'O' && sex === 'M') return undefined // a cock lays nothing that shows it
  const said = traitsIn(saidOf.parts.filter(({ type }) => type === 'colour' || type === 'trait'))
  if (said.some((id) => traits[id]?.allele === allele)) return true
  const breed = ref.breed === undefined ? undefined : breedNamed(ref.breed)
  const gene = breed && genesOf(breed)[locus]
  if (gene?.kind === 'fixed') return gene.allele === allele ? true : undefined
  const recessive = Object.values(traits).some((trait) => trait.allele === allele && !trait.seen)
  const coloured = saidOf.parts.some((part) => part.type === 'colour') || breed !== undefined
  return recessive && coloured && saidOf.carried.length === 0 ? false : undefined
}

export const flockBird = (bird: Bird, name: string, trait: Trait): FlockBird => {
  const own = shows(bird, trait)
  const told = bird.ref.genotype?.[trait.locus]
  return {
    name,
    ...(bird.sex ? { sex: bird.sex } : {}),
    ...(Object.keys(bird.ref).length > 0 ? { bird: bird.ref } : {}),
    ...(own === undefined || told ? {} : { shows: { [trait.allele]: own } }),
    ...(bird.saidOf.split && !told && own !== true ? { carries: { [trait.allele]: true } } : {}),
  }
}

/** Chicks counted, but for those of a relative. */
export const ownChicks = ({ tokens }: Reading): readonly Chicks[] =>
  chicksCounted(tokens).filter(({ at }) => !isOfKin(tokens, at))

/** Chicks told, as showing the trait or clear of it; `unsaid`: chicks counted of which no look was told. */
export function talliesOf(
  reading: Reading,
  trait: Trait,
): { readonly told: readonly Tally[]; readonly unsaid: number } {
  const counted = ownChicks(reading)
  const seen = counted.filter(({ look }) => look.length > 0)
  const total = counted.find(({ look, of }) => look.length === 0 && of === undefined)
  const told = seen.flatMap(({ count, of, sex, look, not }): readonly Tally[] => {
    const is = showsIt(look, trait, not)
    if (is === undefined) return []
    const own = sex ? { sex } : {}
    const rest = of === undefined || (!is && !not) ? [] : [{ count: of - count, ...own, shows: !is }]
    return [{ count, ...own, shows: is }, ...rest].filter((one) => one.count > 0)
  })
  if (!total) return { told, unsaid: 0 }
  const own = total.sex ? { sex: total.sex } : {}
  if (seen.length === 0) {
    const all = saidOfAll(reading.tokens)
    const is = all && (all.look.length === 0 ? false : showsIt(all.look, trait, all.not))
    return is === undefined
      ? { told, unsaid: total.count }
      : { told: [{ count: total.count, ...own, shows: is }], unsaid: 0 }
  }
  const left = total.count - told.reduce((sum, { count }) => sum + count, 0)
  const rest = told.every(({ shows: is }) => is) && left > 0 ? [{ count: left, ...own, shows: false }] : []
  return { told: [...told, ...rest], unsaid: 0 }
}

/** Undefined where these words say nothing of the trait: white covers colours, and "not black" may be anything. */
function showsIt(look: readonly Token[], trait: Trait, not: boolean): boolean | undefined {
  if (isOf(look, trait)) return !not
  if (trait.allele === 'lav' && look.some(({ word }) => /^gr[ea]ys?$/u.test(word))) return !not
  if (not || look.every(isSpot)) return undefined
  const white = look.some((token) => token.type === 'colour' && token.colour === 'white')
  return white && coveredByWhite.has(trait.locus) ? undefined : false
}

const coveredByWhite: ReadonlySet<string> = new Set(['lav', 'choc', 'B', 'mo', 'S', 'Bl', 'E', 'ig'])

export const isParent = ({ saidOf }: Bird): boolean =>
  saidOf.parts.some((part) => ((part.type === 'cock' || part.type === 'hen') && part.parent) || part.type === 'kin')

/** "6 silver pullets": counted as chicks, no bird of the mating. */
export function isChick({ saidOf }: Bird, { tokens }: Reading): boolean {
  const looks = new Set(chicksCounted(tokens).flatMap(({ look }) => look.map(({ at }) => at)))
  return (
    (saidOf.parts.some(({ type }) => type === 'number') || saidOf.parts.length <= 2) &&
    saidOf.parts.some(({ at }) => looks.has(at))
  )
}

export const traitIdOf = ({ allele, locus }: Trait): string =>
  Object.keys(traits).find((id) => traits[id]?.allele === allele && traits[id]?.locus === locus) ?? ''
