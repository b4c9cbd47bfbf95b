// grammar/build/list.ts: birds one after another: which may stand in one list.
import { lociOfAllele } from '../../core/genotype.ts'
import { isNamed, sexOfGroup, sexSaid, type BirdSaid, type Group } from '../saying.ts'
import { tokensIn, type Reject, type Words } from './words.ts'

export const list = ([one]: [BirdSaid]): Group => [one]

const hasName = ({ parts }: BirdSaid): boolean => parts.some(({ type }) => type === 'breed' || type === 'family')
const hasLine = ({ parts }: BirdSaid): boolean => parts.some(({ type }) => type === 'line')
const sexWord = ({ parts }: BirdSaid) => parts.find((part) => part.type === 'cock' || part.type === 'hen')

/** "one lavender": a number and a colour, of no named breed. */
export const isCount = (bird: BirdSaid): boolean =>
  bird.parts.some(({ type }) => type === 'number') && !hasName(bird) && sexWord(bird) === undefined
/** "one Delaware rooster": what follows is another kind of bird. */
const isSingle = (bird: BirdSaid): boolean => {
  const sex = sexWord(bird)
  return hasName(bird) && (sex?.type === 'cock' || sex?.type === 'hen') && !sex.many
}

/** "Australorp, roo RIR": a sex word in front of a name is not said of the birds before it. */
const leadsWithSex = ({ parts: [first] }: BirdSaid): boolean => first?.type === 'cock' || first?.type === 'hen'

/** "S/- and E/E": genes of other loci, which are of the same bird. */
function areOtherGenes(last: BirdSaid, one: BirdSaid): boolean {
  const loci = ({ parts }: BirdSaid): readonly (string | undefined)[] =>
    parts.filter(({ type }) => type === 'gene').map(({ said }) => lociOfAllele(said.split('/')[0] ?? '')?.locus)
  const [own, more] = [loci(last), loci(one)]
  return own.length > 0 && more.length === one.parts.length && !more.some((locus) => own.includes(locus))
}

/** Birds of a list are of one sex, and all named, save that a line may stand for the breed behind it. */
export const listed = ([group, joint, one]: [Group, Words, BirdSaid], _at: number, reject: Reject): Group | Reject => {
  const [sex, other] = [sexOfGroup(group), sexSaid(one)]
  const [first, last] = [group[0]!, group.at(-1)!]
  const or = tokensIn(joint).some(({ type }) => type === 'or')
  const apart =
    (sex !== undefined && other !== undefined && sex !== other) ||
    (isCount(one) && !isCount(first)) ||
    (areOtherGenes(last, one) && tokensIn(joint).every(({ type }) => type === 'and')) ||
    (one.gap && one.parts.every(({ type }) => type === 'gene')) ||
    (sex === undefined && !or && isNamed(one) && leadsWithSex(one)) ||
    (isSingle(last) && other === undefined && isNamed(one) && !or) ||
    (group.length === 1 && isNamed(one) && !isNamed(first) && !hasLine(first)) ||
    (group.some(isNamed) && !isNamed(one) && !(or && hasLine(one)))
  return apart ? reject : [...group, one]
}
