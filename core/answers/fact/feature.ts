// core/answers/fact/feature.ts: one feature of a breed that was asked about: form, skin, lobes, origin, flight, lethal genes, breeding true. Says so where the catalogue does not know it.
import { genesOf, type Breed, type GeneRecord } from '../../breeds.ts'
import { loci, locusIds, type LocusId } from '../../data/loci.ts'
import type { Feature } from '../../question.ts'
import { youngSex } from './youngSex.ts'
import { oneLocus, skin } from './form.ts'
import { ground } from './genes.ts'
import { isLocus } from './locus.ts'
import { looksOf } from './looks.ts'
import { hiddenIn, madeOf } from './makeUp.ts'
import { andList, nameOf, share, sharesIn } from './shares.ts'
import { colourWords, formWords } from './words.ts'

type Said = (breed: Breed, line: string | undefined, locus: string | undefined) => string

/** The locus behind a feature of form, and the words for a bird that lacks it. */
const forms = {
  crest: { locus: 'Cr', lack: 'no crest' },
  beard: { locus: 'Mb', lack: 'no muffs or beard' },
  feet: { locus: 'Pti', lack: 'clean legs' },
  toes: { locus: 'Po', lack: 'four toes' },
  tail: { locus: 'Rp', lack: 'a tail' },
  tufts: { locus: 'Et', lack: 'no ear tufts' },
  neck: { locus: 'Na', lack: 'a feathered neck' },
  'short-legs': { locus: 'Cp', lack: 'legs of the usual length' },
} as const satisfies Partial<Record<Feature, { locus: LocusId; lack: string }>>
type Form = keyof typeof forms

const isForm = (feature: Feature): feature is Form => feature in forms

/** Share of birds with at least one copy of a form that is not the wild one, and the form they have most. */
function shown(gene: GeneRecord | undefined, locus: LocusId): readonly [form: string, share: number] {
  const forms = gene ? sharesIn(gene).filter(([allele]) => allele !== loci[locus].wild) : []
  const share = gene?.kind === 'genotype' ? 1 : forms.reduce((sum, [, part]) => sum + part, 0)
  return [formWords[forms[0]?.[0] ?? ''] ?? '', forms.length === 0 ? 0 : share]
}

/** 'Mottled Houdan has a crest, as a rule.' */
function form({ locus, lack }: (typeof forms)[Form], breed: Breed, line: string | undefined): string {
  const [words, share] = shown(genesOf(breed, line)[locus], locus)
  if (share === 0) return `${breed.name} has ${lack}, as far as the catalogue knows.`
  if (share >= 0.9) return `${breed.name} has ${words}, as a rule.`
  return `${share >= 0.5 ? 'Most' : 'Some'} ${breed.name} birds have ${words}; others have ${lack}.`
}

/** Whose kind has no looks of its own. */
const isMixture = ({ type, name, madeFrom }: Breed): boolean =>
  madeFrom !== undefined || type === 'hybrid' || /Egger|Mixed/u.test(name)

/** Genes that stand in two different copies in every bird of the breed. */
const impure = (breed: Breed, line: string | undefined): readonly LocusId[] => {
  const genes = genesOf(breed, line)
  return locusIds.filter((locus) => {
    const gene = genes[locus]
    return gene?.kind === 'genotype' && gene.hen === undefined && gene.alleles[0] !== gene.alleles[1]
  })
}

/** What a form that is not the wild one is called. */
function called(breed: Breed, line: string | undefined, locus: LocusId): string {
  const gene = genesOf(breed, line)[locus]
  const allele = (gene ? sharesIn(gene) : []).map(([one]) => one).find((one) => one !== loci[locus].wild) ?? ''
  return colourWords[allele] ?? formWords[allele] ?? nameOf(locus)
}

const breedsTrue: Said = (breed, line) => {
  const { name } = breed
  if (isMixture(breed)) return `No: ${name} is a cross or a mixture, and its chicks differ from it and from each other.`
  const [locus] = impure(breed, line)
  if (locus !== undefined)
    return `No: a ${name} has one copy of ${called(breed, line, locus)}, so two of them give about half like themselves, a quarter with two copies, a quarter with none.`
  if (breed.colour === undefined && breed.type !== 'described')
    return `In shape yes, as a rule; ${name} birds come in many colours, so chicks may differ in colour.`
  return `Yes, as a rule: two ${name} birds of a pure strain give their like; what a strain hides may still turn up.`
}

const origin: Said = ({ name, class: kind, madeFrom: [made] = [] }) =>
  made
    ? `${name} is a first cross, mostly ${made.sire} on ${made.dam}.`
    : /^(?:Other|Described|Bantam|Game|Hybrid)$/u.test(kind)
      ? `Where the ${name} comes from, and what it was made from, the catalogue does not know.`
      : `Show books put the ${name} with the ${kind} breeds; what it was made from the catalogue does not know.`

const lethal: Said = (breed, line) => {
  const genes = genesOf(breed, line)
  const killers = (['Cp', 'Et'] as const).filter((locus) => shown(genes[locus], locus)[1] > 0)
  if (killers.length > 0)
    return `Yes: ${breed.name} birds may have ${andList(killers.map((locus) => shown(genes[locus], locus)[0]))}, and two copies of that kill the chick in the shell.`
  if (shown(genes['Cr'], 'Cr')[1] > 0)
    return `No: as far as is known the crest of ${breed.name} kills no chick, with one copy or two; the lethal crest is a duck’s.`
  return `No: the catalogue knows of no gene in ${breed.name} that kills the chick.`
}

const flight: Said = ({ name, type }) =>
  type === 'heavy'
    ? `${name} is a heavy breed, and heavy hens mostly stay behind a low fence; how it flies the catalogue does not know.`
    : `${name} is ${type === 'light' ? 'a light breed' : 'a small bird'}, and such hens mostly clear a low fence; how it flies the catalogue does not know.`

/** 'a pea comb, muffs, slate legs and blue eggs'. */
function marksOf(breed: Breed, line: string | undefined): readonly string[] {
  const form = Object.values(forms).flatMap(({ locus }) => {
    const [words, share] = shown(genesOf(breed, line)[locus], locus)
    return share >= 0.9 ? [words] : []
  })
  const isKnown = (word: string): boolean => !/^(?:any|mixed|unknown)|unless told/u.test(word)
  return [
    ...(isKnown(breed.comb) ? [`a ${breed.comb} comb`] : []),
    ...form.filter((words) => !/feet/u.test(words) || !breed.shank.includes('feathered')),
    ...(isKnown(breed.shank)
      ? [`${breed.shank.replace(/,(?! (?:heavily |lightly )?feathered).*/u, '').replace(',', ' and')} legs`]
      : []),
    ...(isKnown(breed.shell.colour) ? [`${breed.shell.colour} eggs`] : []),
  ]
}

/** What is mostly sold under the name of a rarer breed, by keepers' word. */
const soldInstead: Readonly<Record<string, string>> = { Ameraucana: 'Easter Egger', Araucana: 'Easter Egger' }

const marks: Said = (breed, line) => {
  const named = marksOf(breed, line)
  if (isMixture(breed) || named.length === 0)
    return `${breed.name} is no breed with looks of its own, so nothing proves or disproves it.`
  const sold = soldInstead[breed.family]
  if (sold !== undefined)
    return `Under the name ${breed.family} mostly ${sold} birds are sold: a true one has ${andList(named)}, all of them.`
  return `Look for ${andList(named)}: a ${breed.name} has them all, and a bird that lacks one is something else.`
}

const lobes: Said = ({ name, class: kind }) =>
  `The catalogue does not know the ear lobes of ${name}; ${kind === 'Mediterranean' ? 'Mediterranean breeds mostly have white ones' : 'Mediterranean breeds mostly have white ones, heavy breeds mostly red'}.`

const eyes: Said = ({ name }) => `The catalogue does not know the eye colour of ${name}; its show standard does.`

const isDarkSkinned = (breed: Breed, line: string | undefined): boolean => share(genesOf(breed, line)['Fm'], 'Fm') > 0.5
const skins: Said = (breed, line) =>
  isDarkSkinned(breed, line) ? `${breed.name} has dark skin, as a rule.` : skin(breed, line)

/** 'a cock has two copies, a hen one': of a gene on the Z, or not. */
const copies: Said = (breed, line, locus = 'S') => {
  const gene = genesOf(breed, line)[locus]
  const [[allele, part] = ['', 0]] = gene ? sharesIn(gene) : []
  const isHad = isLocus(locus) && (locus === 'S' || allele !== loci[locus].wild)
  if (part < 1 || !isHad) return oneLocus(breed, locus, line)
  const name = locus === 'S' ? (allele === 'S' ? 'silver' : 'gold') : nameOf(locus)
  return loci[locus].on === 'Z'
    ? `${breed.name}: a cock has two copies of ${name}, a hen one, as her one Z has room for no more.`
    : `${breed.name}: cock and hen alike have two copies of ${name}.`
}

const oneLocusOf: Said = (breed, line, locus = 'S') => oneLocus(breed, locus, line)

const sentences: Readonly<Record<Exclude<Feature, Form>, Said>> = {
  skin: skins,
  lobes,
  eyes,
  origin,
  lethal,
  flight,
  marks,
  copies,
  ground: (breed, line) => ground(breed, line).replace(/^Its ground/u, `${breed.name}: its ground`),
  'breeds-true': breedsTrue,
  'sex-signs': youngSex,
  'make-up': madeOf,
  hidden: hiddenIn,
  looks: looksOf,
  'sex-linked': oneLocusOf,
}

/** The locus of which more can be told. */
export function locusOfFeature(breed: Breed, line: string | undefined, feature: Feature): LocusId | undefined {
  if (isForm(feature)) return forms[feature].locus
  if (feature === 'skin') return isDarkSkinned(breed, line) ? 'Fm' : 'W'
  return feature === 'ground' ? 'E' : undefined
}

/** One sentence, what was asked of the bird or that it is not known. */
export const featureOf = (breed: Breed, line: string | undefined, feature: Feature, locus?: string): string =>
  isForm(feature) ? form(forms[feature], breed, line) : sentences[feature](breed, line, locus)
