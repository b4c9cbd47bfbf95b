// core/answers/fact/genes.ts: gold or silver, ground, barring, white and feathering of a breed, as sentences that stand alone.
import { genesOf, type Breed } from '../../breeds.ts'
import { andList, cover, share, sharesIn } from './shares.ts'
import { groundWords, surely } from './words.ts'

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
