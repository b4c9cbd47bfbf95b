// core/answers/fact/form.ts: the other colour genes of a breed, its form, what is least sure of it, and one locus asked for.
import { genesOf, type Breed } from '../../breeds.ts'
import { barring, feathering, goldOrSilver, ground, white } from './genes.ts'
import { andList, cover, nameOf, sharesIn, wildOf } from './shares.ts'
import { colourWords, formWords, surely } from './words.ts'

const carried = (
  breed: Breed,
  line: string | undefined,
  words: Readonly<Record<string, string>>,
  least: number,
): string[] =>
  Object.entries(genesOf(breed, line)).flatMap(([locus, gene]) =>
    sharesIn(gene)
      .filter(([allele, part]) => allele in words && allele !== wildOf(locus) && part >= least)
      .map(([allele, part]) => (part === 1 || gene.kind === 'genotype' ? words[allele]! : `${words[allele]!} in some`)),
  )

/** The other colour genes, without the whites, which have a sentence of their own. */
export function colourGenes(breed: Breed, line?: string): string {
  const whites = cover(breed, line) === 'white'
  const found = carried(breed, line, colourWords, 0.3).filter((words) => !whites || !words.includes(' white'))
  return found.length > 0 ? `Colour genes beside: ${andList(found)}.` : ''
}

export function form(breed: Breed, line?: string): string {
  const also = carried(breed, line, formWords, 0.2)
  return `Comb ${breed.comb}, shanks ${breed.shank}${also.length > 0 ? `; also ${andList(also)}` : ''}.`
}

/** Loci of which the catalogue is least sure, by name. */
export function unsure(breed: Breed, line?: string): string {
  const named = Object.entries(genesOf(breed, line))
    .filter(([, { kind, confidence }]) => confidence === 'low' && kind !== 'genotype')
    .map(([locus]) => nameOf(locus))
  return named.length > 0 ? `Least sure here: ${andList(named.slice(0, 5))}.` : ''
}

/** White or yellow skin. */
export function skin(breed: Breed, line?: string): string {
  const gene = genesOf(breed, line)['W']
  const yellow = gene ? sharesIn(gene).reduce((sum, [allele, part]) => sum + (allele === 'w' ? part : 0), 0) : 0
  if (yellow === 1) return `${breed.name} has yellow skin, and yellow legs where nothing darkens them.`
  if (yellow === 0) return `${breed.name} has white skin.`
  return `${breed.name} has ${yellow >= 0.5 ? 'mostly yellow, in some strains white' : 'mostly white, in some strains yellow'} skin.`
}

/** One locus of a breed, for a question about just that. */
export function oneLocus(breed: Breed, locus: string, line?: string): string {
  if (locus === 'S') return goldOrSilver(breed, line)
  if (locus === 'B') return barring(breed, line)
  if (locus === 'K') return feathering(breed, line)
  if (locus === 'E') return ground(breed, line)
  if ((locus === 'I' || locus === 'c') && white(breed, line)) return white(breed, line)
  const gene = genesOf(breed, line)[locus]
  const name = nameOf(locus)
  if (locus === 'W') return skin(breed, line)
  if (!gene) return `${breed.name}: at ${name} it has the wild type (${wildOf(locus)}) as far as known.`
  const [[allele, part] = ['', 0]] = sharesIn(gene)
  const shown = formWords[allele]
  if (gene.kind === 'fixed' && shown !== undefined)
    return `${breed.name} ${surely[gene.confidence]} pure for ${shown} (${allele}).`
  if (gene.kind === 'fixed') return `${breed.name} ${surely[gene.confidence]} pure ${allele} at ${name}.`
  if (gene.kind === 'genotype') return `${breed.name} is ${gene.alleles.join('/')} at ${name}.`
  const counted = allele === wildOf(locus) ? (sharesIn(gene)[1]?.[0] ?? allele) : allele
  const most = part >= 0.7 ? `mostly ${allele}` : `more often ${allele}`
  return `${breed.name} varies at ${name}: a bird may have two, one or no copies of ${counted}; ${most}.`
}
