// core/answers/fact/makeUp.ts: which genes make a breed's colour, and which recessive ones its birds show or may hide.
import { genesOf, type Breed } from '../../breeds.ts'
import { isLocus } from './locus.ts'
import { andList, cover, share, sharesIn, wildOf } from './shares.ts'
import { colourWords, groundWords } from './words.ts'

/** Genes that show in two copies only, by allele: what a keeper could meet in a chick of two birds that did not show it. */
const recessives: Readonly<Record<string, string>> = {
  lav: 'lavender',
  choc: 'chocolate',
  c: 'recessive white',
  mo: 'mottling',
  ig: 'cream',
  cb: 'champagne blond',
  h: 'silkie feather',
}

/** Colour alleles of most birds of the breed, in words, but for the ground and gold or silver. */
const most = (breed: Breed, line: string | undefined): readonly string[] =>
  Object.entries(genesOf(breed, line)).flatMap(([locus, gene]) =>
    sharesIn(gene)
      .filter(
        ([allele, part]) =>
          allele in colourWords && allele !== wildOf(locus) && (part >= 0.6 || gene.kind === 'genotype'),
      )
      .map(([allele]) => (gene.kind === 'genotype' ? `one copy of ${colourWords[allele]!}` : colourWords[allele]!)),
  )

/** 'Isabel Leghorn: wild-type (black-red) ground, gold, with lavender.' */
export function madeOf(breed: Breed, line: string | undefined): string {
  const genes = genesOf(breed, line)
  const [[ground] = ['']] = genes['E'] ? sharesIn(genes['E']) : []
  const over = cover(breed, line)
  const metal = share(genes['S'], 'S') >= 0.5 ? 'silver' : 'gold'
  const bars = share(genes['B'], 'B') >= 0.5 ? ['barring'] : []
  const beside = [...most(breed, line), ...bars]
  if (over === 'white')
    return `${breed.name} is white by ${beside.find((one) => one.includes('white')) ?? 'a gene for white'}, over whatever colour lies below.`
  const onto = [
    ...(ground === '' ? [] : [ground === 'E' ? groundWords['E']! : `${groundWords[ground] ?? ground} ground`]),
    ...(over === undefined ? [metal] : []),
  ]
  return `${breed.name}: ${onto.join(', ')}${beside.length > 0 ? `, with ${andList(beside)}` : ''}.`
}

/** What shows because every bird has two copies, and what some hide. */
export function hiddenIn(breed: Breed, line: string | undefined): string {
  const found = Object.entries(genesOf(breed, line)).flatMap(([locus, gene]) =>
    isLocus(locus)
      ? sharesIn(gene)
          .filter(([allele]) => allele in recessives)
          .map(([allele, part]) => ({ words: recessives[allele]!, part, kind: gene.kind }))
      : [],
  )
  const shown = found.filter(({ part }) => part === 1).map(({ words }) => words)
  const hidden = found.filter(({ part }) => part < 1).map(({ words }) => words)
  const name = breed.name
  if (cover(breed, line) === 'white' && shown.length > 0)
    return `${name} is ${andList(shown)}, and below it may lie any colour: what comes with coloured mates tells.`
  if (shown.length > 0)
    return `${name} shows ${andList(shown)}, recessive and pure in the breed${hidden.length > 0 ? `; some birds hide ${andList(hidden)}` : '; hidden ones the catalogue does not know'}.`
  return hidden.length > 0
    ? `Some do: ${name} birds may hide ${andList(hidden)}, which only a chick or a test mating shows.`
    : `No recessive that the catalogue knows of belongs to ${name}; a strain may hide one, and only its chicks tell.`
}
