// core/answers/parents.ts: the `parents` answer: from the looks of chicks to which named cock and hen can be behind them.
import type { ParentsAnswer } from '../answer.ts'
import { nameOfBird, seenBird } from '../cross/seen.ts'
import type { BirdRef, ParentsQuestion } from '../question.ts'
import { assumptionWords, birdsOf, fitting, nothingElse } from './parts.ts'
import { canLay, unnamedDam, unnamedSire } from './parents/egg.ts'
import { isByDefault, misread, seenChicks, type Weighed, weighPair } from './parents/evidence.ts'
import { tellApart } from './parents/tell.ts'
import { rulesOut, whyNot } from './parents/rule.ts'

/** What a shell of the wrong colour leaves of the odds: eggs get under other hens. */
const wrongShell = 0.004
/** Below this a bird counts as ruled out. */
const hardly = 0.005
/** Above this one bird is called by name in the verdict. */
const clear = 0.75

type Odds = { readonly one: Weighed; readonly odds: number }

/** Every pair of the birds named is as likely as any other before the chicks are looked at. */
export function answerParents(question: ParentsQuestion): ParentsAnswer {
  const { egg } = question
  if (question.sires.length + question.dams.length === 0) return nobodyNamed(question)
  const chicks = seenChicks(question.chicks)
  const sires = question.sires.length > 0 ? question.sires : [unnamedSire]
  const dams = question.dams.length > 0 ? question.dams : [unnamedDam(egg)]
  const pairs = sires.flatMap((sire) => dams.map((dam) => ({ sire, dam })))
  const first = pairs.map((pair) => weighPair(pair, chicks))
  const unaccounted = first.every((one) => isByDefault(one) || one.shares.some((share) => share === 0))
  const weighed = unaccounted ? pairs.map((pair) => weighPair(pair, chicks, misread)) : first
  const scaled = weighed.map((one) => ({ one, weight: one.weight * (canLay(one.pair.dam, egg) ? 1 : wrongShell) }))
  const whole = scaled.reduce((sum, { weight }) => sum + weight, 0)
  const ranked = scaled
    .map(({ one, weight }): Odds => ({ one, odds: weight / whole }))
    .toSorted((a, b) => b.odds - a.odds)
  const told = ranked.map(({ one }) => one)
  const out = [
    ...question.sires.flatMap((bird) => ruled(bird, 'sire', ranked, whyNot(bird, 'sire', told, chicks))),
    ...question.dams.flatMap((bird) =>
      ruled(
        bird,
        'dam',
        ranked,
        canLay(bird, egg) ? whyNot(bird, 'dam', told, chicks) : `she does not lay a ${egg} egg`,
      ),
    ),
  ]
  const nobody = ranked.every(({ one }) => !one.loose && one.shares.some((share) => share === 0))
  return {
    kind: 'parents',
    ...nothingElse,
    summary: withUnseen(question, nobody ? noneFits(question) : (signsOf(question, told) ?? verdict(question, ranked))),
    assumptions: [...assumptionWords(question.assumed), ...taken(question)],
    assumed: question.assumed,
    ...birdsOf({ sire: question.sires, dam: question.dams }),
    candidates: ranked
      .filter(({ odds }) => odds >= hardly)
      .map(({ one, odds }) => ({
        sire: seenBird(one.pair.sire),
        dam: seenBird(one.pair.dam),
        odds,
        why: whyWords(one),
      })),
    ruledOut: nobody ? [] : out,
    ruledOutBy: nobody ? '' : rulesOut(told),
  }
}

/** Nothing is told of the chick: what would tell its father or mother. */
function signsOf({ chicks, sires, dams }: ParentsQuestion, weighed: readonly Weighed[]): string | undefined {
  if (chicks.length > 0) return undefined
  const [father, mother] = [tellApart(sires, 'sire', weighed), tellApart(dams, 'dam', weighed)]
  const signs = [sires.length > 1 ? father : '', dams.length > 1 ? mother : ''].filter(Boolean)
  return signs.length > 0 ? fitting(signs.join(' '), signs[0]!) : undefined
}

const withUnseen = ({ unseen }: ParentsQuestion, words: string): string =>
  unseen === true ? fitting(`I see no pictures. ${words}`, words) : words

/** Looks alone name no parents: too many birds share them. */
const nobodyNamed = (question: ParentsQuestion): ParentsAnswer => ({
  kind: 'parents',
  ...nothingElse,
  summary:
    'Looks alone do not name the parents. Tell me which cocks and hens could be behind the chick, and I weigh them.',
  assumptions: assumptionWords(question.assumed),
  assumed: question.assumed,
  ...birdsOf({}),
  candidates: [],
  ruledOut: [],
  ruledOutBy: '',
})

function ruled(
  bird: BirdRef,
  part: 'sire' | 'dam',
  ranked: readonly Odds[],
  why: string | undefined,
): ParentsAnswer['ruledOut'] {
  const odds = oddsOf(bird, part, ranked)
  return why !== undefined && odds < hardly ? [{ bird: seenBird(bird), by: why }] : []
}

const oddsOf = (bird: BirdRef, part: 'sire' | 'dam', ranked: readonly Odds[]): number =>
  ranked.filter(({ one }) => one.pair[part] === bird).reduce((sum, { odds }) => sum + odds, 0)

/** 'all of its chicks look so', 'about 25 in 100 of its chicks look so'. */
function whyWords(one: Weighed): string {
  const { shares } = one
  if (shares.length === 0) return 'Nothing is told of the chick yet.'
  const share = Math.min(...shares)
  if (isByDefault(one)) return 'Possible: such a bird may be of any colour.'
  if (share > 0.995) return 'All their chicks look so.'
  if (share === 0) return 'None of their chicks should look so.'
  return share < 0.01
    ? 'Few of their chicks look so.'
    : `About ${Math.round(share * 100)} in 100 of their chicks look so.`
}

const taken = ({ sires, dams }: ParentsQuestion): readonly string[] => [
  ...(sires.length > 1 || dams.length > 1 ? ['every pair of the birds named was as likely as any other before'] : []),
  ...(sires.length === 0 ? ['nothing is known of the cock'] : []),
  ...(dams.length === 0 ? ['nothing is known of the hen but what the egg tells'] : []),
]

/** The likeliest bird of each side that has a choice. */
function verdict({ sires, dams }: ParentsQuestion, ranked: readonly Odds[]): string {
  const best = (birds: readonly BirdRef[], part: 'sire' | 'dam'): string => {
    if (birds.length === 0) return ''
    const [first, second] = birds
      .map((bird) => ({ bird, odds: oddsOf(bird, part, ranked) }))
      .toSorted((a, b) => b.odds - a.odds)
    const role = part === 'sire' ? 'father' : 'mother'
    if (second === undefined) return birds.length === 1 ? `${nameOfBird(first!.bird)} can be the ${role}` : ''
    const name = nameOfBird(first!.bird)
    const top = ranked.find(({ one }) => one.pair[part] === first!.bird)
    if (top && isByDefault(top.one))
      return `only ${name}, of any colour, is not ruled out as ${role}; nothing speaks for it`
    if (first!.odds > 0.99) return `${name} is the ${role}, as far as looks tell`
    if (first!.odds >= clear) return `${name} is most likely the ${role}`
    return first!.odds - second.odds < 0.05
      ? `the looks do not tell ${name} from ${nameOfBird(second.bird)} as ${role}`
      : `${name} is the likelier ${role}, ${nameOfBird(second.bird)} may be`
  }
  const [one, other] = [best(sires, 'sire'), best(dams, 'dam')]
  const all = [one, other].filter(Boolean)
  return fitting(
    ...[`${all.join('; ')}.`, `${one || other}.`].map((text) => text.replace(/^./u, (first) => first.toUpperCase())),
  )
}

const noneFits = ({ sires, dams }: ParentsQuestion): string =>
  fitting(
    `None of ${[...sires, ...dams].map(nameOfBird).join(', ')} should give such a chick: another bird is behind it, or the look is read otherwise.`,
    'None of these birds should give such a chick: another bird is behind it, or the look is read otherwise.',
  )
