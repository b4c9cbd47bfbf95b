// core/answers/fact/youngSex.ts: what tells a growing cockerel of a breed from a pullet, by its barring, its comb and its feather. From memory where nothing was read, and hedged.
import { genesOf, type Breed } from '../../breeds.ts'
import { share } from './shares.ts'

const late = (name: string): string =>
  `${name} birds show their sex late, mostly not before four months: cockerels redden and broaden in the comb first, and grow pointed feathers.`

/** Every bird has the bars, a cock in two copies: the dose tells the sexes. */
export const isBarred = (breed: Breed, line: string | undefined): boolean => share(genesOf(breed, line)['B'], 'B') === 1

/** One sentence that stands alone. Only of the pure breed: a cross takes after the other side too. */
export function youngSex(breed: Breed, line: string | undefined): string {
  const { name, comb } = breed
  const genes = genesOf(breed, line)
  if (share(genes['h'], 'h') > 0.5) return late(name)
  if (isBarred(breed, line))
    return `In pure ${name} cockerels mostly look paler, with white bars as wide as the dark ones, and their combs redden first.`
  if (/^(?:pea|rose|walnut|cushion|V)/u.test(comb))
    return `In ${name} the ${comb} comb shows late: broad and clearly red at about eight weeks it mostly means a cockerel, narrow and pale a pullet.`
  if (comb.startsWith('single'))
    return `In ${name} a comb that is tall and clearly red at about six weeks mostly means a cockerel; pullets’ combs stay small and pale longer.`
  return `In ${name} a comb that is broad and clearly red at about six to eight weeks mostly means a cockerel, small and pale a pullet.`
}
