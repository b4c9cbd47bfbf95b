// core/answers/fact/genes.ts: what a breed carries, locus by locus, as sentences that stand alone.
import { genesOf, type Breed, type GeneRecord } from '../../breeds.ts'
import { loci } from '../../data/loci.ts'
import type { Locus } from '../../vocabulary.ts'
import { colourWords, formWords, groundWords, surely } from './words.ts'

const known: Readonly<Record<string, Locus>> = loci
const nameOf = (locus: string): string => known[locus]?.name ?? locus
const wildOf = (locus: string): string => known[locus]?.wild ?? ''

/** Shares of the alleles of a record, commonest first. */
function sharesIn(gene: GeneRecord): readonly (readonly [allele: string, share: number])[] {
  if (gene.kind === 'fixed') return [[gene.allele, 1]]
  if (gene.kind === 'segregates')
    return Object.entries(gene.freq)
      .filter(([, share]) => share > 0)
      .toSorted((a, b) => b[1] - a[1])
  return [...new Set(gene.alleles)].map((allele) => [allele, gene.alleles.filter((one) => one === allele).length / 2])
}

const share = (gene: GeneRecord | undefined, allele: string): number =>
  gene ? (sharesIn(gene).find(([one]) => one === allele)?.[1] ?? 0) : 0

/** The colours that keep gold and silver from sight. */
function cover(breed: Breed, line: string | undefined): 'black' | 'white' | undefined {
  if (breed.shows?.some((any) => any.includes('c') || any.includes('I'))) return 'white'
  return share(genesOf(breed, line)['E'], 'E') > 0.5 ? 'black' : undefined
}

/** Gold or silver, and how surely; for black and white birds, that it is hidden. */
export function goldOrSilver(breed: Breed, line?: string): string {
  const gene = genesOf(breed, line)['S']
  const { name } = breed
  const over = cover(breed, line)
  const silver = share(gene, 'S')
  if (gene?.kind === 'genotype' && gene.hen)
    return `${name} hens are ${gene.hen[0] === 'S' ? 'silver' : 'gold'}; the cocks are ${gene.alleles.join('/')}, silver hiding gold.`
  if (over) {
    const lean = silver >= 0.8 ? 'is mostly silver' : silver <= 0.2 ? 'is mostly gold' : 'may be gold or silver'
    return `Under the ${over} a ${name} ${lean}: nobody can see it, and only its chicks from a gold mate tell.`
  }
  if (!gene) return `${name} is gold underneath as far as known: cocks s+/s+, hens s+/-.`
  if (gene.kind === 'fixed') {
    const gold = gene.allele === 's+'
    const copies = gold ? ['s+/s+', 's+/-'] : ['S/S', 'S/-']
    return `${name} ${surely[gene.confidence]} ${gold ? 'gold' : 'silver'}: cocks ${copies[0]!}, hens ${copies[1]!}.`
  }
  if (silver >= 0.8) return `${name} is mostly silver (S); a strain may hide some gold.`
  if (silver <= 0.2) return `${name} is mostly gold (s+); a silver one turns up now and then.`
  return `${name} may be gold or silver: say which your birds show.`
}

const andList = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`

/** The ground colour: 'mostly wheaten, sometimes brown'. */
export function ground(breed: Breed, line?: string): string {
  const gene = genesOf(breed, line)['E']
  if (!gene) return ''
  const named = new Map<string, number>()
  for (const [allele, part] of sharesIn(gene)) {
    const words = groundWords[allele] ?? allele
    named.set(words, (named.get(words) ?? 0) + part)
  }
  const [[first, most] = ['', 0], ...rest] = [...named]
  const others = rest.filter(([, part]) => part >= 0.1).map(([words]) => words)
  const under = cover(breed, line) === 'white' ? 'Under its white the ground' : 'Its ground'
  if (others.length === 0 || most === 1) return `${under} ${surely[gene.confidence]} ${first}.`
  return most >= 0.6
    ? `${under} is mostly ${first}, in some strains ${andList(others)}.`
    : `${under} varies: ${andList([first, ...others])}.`
}

export function barring(breed: Breed, line?: string): string {
  const gene = genesOf(breed, line)['B']
  const part = share(gene, 'B')
  const { name } = breed
  if (gene?.kind === 'genotype') return `${name} cocks carry one copy of barring, the hens none.`
  if (part === 1) return `${name} is barred: cocks have two copies, hens one, which goes to their sons only.`
  if (part === 0) return `${name} is not barred.`
  if (cover(breed, line) === 'white')
    return `Its white may cover barring: about ${tenths(part)} in 10 strains, at a guess.`
  return part > 0.5 ? `${name} is mostly barred.` : `Some ${name} birds are barred.`
}

const tenths = (part: number): number => Math.max(1, Math.round(part * 10))

/** Which white, for a white bird; empty for a coloured one. */
export function white(breed: Breed, line?: string): string {
  if (cover(breed, line) !== 'white') return ''
  const genes = genesOf(breed, line)
  const [I, c] = [share(genes['I'], 'I'), share(genes['c'], 'c')]
  const sure = genes[c > I ? 'c' : 'I']?.confidence ?? 'low'
  const { name } = breed
  if (c >= 0.9 && I <= 0.05) return `${name} ${surely[sure]} recessive white (c/c): it hides every colour below.`
  if (c >= 0.7 && c > I) return `${name} is mostly recessive white (c/c), with dominant white in some strains.`
  if (I === 1 && c <= 0.2) return `${name} ${surely[sure]} dominant white (I): its chicks come white whatever the mate.`
  if (I >= 0.7 && I > c) return `${name} is mostly dominant white (I), with recessive white in some strains.`
  return `${name} may be dominant white, recessive white or both: it differs by strain, and a test mating tells.`
}

export function feathering(breed: Breed, line?: string): string {
  const gene = genesOf(breed, line)['K']
  const slow = share(gene, 'K')
  const { name } = breed
  if (gene?.kind === 'fixed') return `${name} ${surely[gene.confidence]} ${slow === 1 ? 'slow' : 'fast'}-feathering.`
  const lean = slow >= 0.6 ? 'more often slow' : slow <= 0.4 ? 'more often fast' : 'slow or fast'
  return `Feathering is ${lean} and differs by strain: look at day-old wings before you sex by them.`
}

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

/** One locus of a breed, for a question about just that. */
export function oneLocus(breed: Breed, locus: string, line?: string): string {
  if (locus === 'S') return goldOrSilver(breed, line)
  if (locus === 'B') return barring(breed, line)
  if (locus === 'K') return feathering(breed, line)
  if (locus === 'E') return ground(breed, line)
  if ((locus === 'I' || locus === 'c') && white(breed, line)) return white(breed, line)
  const gene = genesOf(breed, line)[locus]
  const name = nameOf(locus)
  if (!gene) return `${breed.name}: at ${name} it has the wild type (${wildOf(locus)}) as far as known.`
  const [[allele, part] = ['', 0]] = sharesIn(gene)
  if (gene.kind === 'fixed') return `${breed.name} ${surely[gene.confidence]} pure ${allele} at ${name}.`
  if (gene.kind === 'genotype') return `${breed.name} is ${gene.alleles.join('/')} at ${name}.`
  const counted = allele === wildOf(locus) ? (sharesIn(gene)[1]?.[0] ?? allele) : allele
  const most = part >= 0.7 ? `mostly ${allele}` : `more often ${allele}`
  return `${breed.name} varies at ${name}: a bird may have two, one or no copies of ${counted}; ${most}.`
}
