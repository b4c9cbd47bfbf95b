// bot/render/cross.ts: what a mating gives, verdict first: one mating in full, several in a line or two each.
import { caseBlocks, outcomes } from './cases.ts'
import { adults, downs, forms, usualTelling } from './chicks.ts'
import { faint, line, numbered, strong } from './document.ts'
import { hedged } from './hedged.ts'
import { henAspects, henLine, isOfTheHen, lineNote } from './hen.ts'
import { because, howToRead, later, otherWay, pens, spoilers, sure } from './signs.ts'
import { matingName } from './birds.ts'
import { capital } from './tame.ts'
import { ruleBlocks } from './rules.ts'
import { withLines } from './takenLines.ts'
import { bySex, combAndShank, inSymbols } from './sexes.ts'
import type { Block, Document, Line } from './document.ts'
import type { BirdSeen, Case, CrossAnswer, Crossed } from '../../core/answer.ts'
import type { Aspect } from '../../core/question.ts'
import { tellingOf, usual, wants, type Asked } from './asked.ts'

/** Crosses beyond this many get the verdict alone. */
const mostInFull = 4

/** What the chicks are, as far as it was asked for. */
function looks(one: Case, asked: Asked): readonly Block[] {
  const all = usual(asked) || wants(asked, 'more', 'chicks', 'shares')
  const [down, grown] = [all || wants(asked, 'sexing'), all || wants(asked, 'adults')]
  const telling = tellingOf(asked)
  const form = forms(one, telling.say)
  return [
    ...(down || grown ? bySex(one, { down, grown }, telling) : []),
    ...(grown && form ? [line(`Also, ${form}.`)] : []),
    ...(grown ? hedged(one, wants(asked, 'more', 'adults') ? 3 : 1) : []),
    ...(wants(asked, 'comb', 'more') ? combAndShank(one, telling) : []),
    ...(asked.manner.symbols || wants(asked, 'symbols') ? inSymbols(one, telling) : []),
  ]
}

/** How to tell the sexes, as far as it was asked for. */
function sexing(one: Case, asked: Asked, verdict: string): readonly Block[] {
  const told = one.sexing
  if (!usual(asked) && !wants(asked, 'sexing', 'why', 'more', 'reverse', 'chicks')) return []
  return [
    ...howToRead(told, wants(asked, 'more') ? 9 : 2, verdict),
    ...(wants(asked, 'why') ? because(told) : []),
    ...(told.verdict !== 'yes' || wants(asked, 'sexing', 'more') ? later(told) : []),
    ...(wants(asked, 'more') ? pens(told) : []),
    ...(wants(asked, 'why', 'more') ? spoilers(told) : []),
    ...otherWay(told),
  ]
}

/** A bird of which only genes are told lays what nobody knows. */
const known = (bird: BirdSeen): boolean => bird.breed !== undefined || bird.cross !== undefined

function hen(one: Case, asked: Asked): readonly Block[] {
  if (!one.hen) return []
  const { units } = asked.manner
  const told = henAspects(one.hen, wants(asked, 'more') ? everyHenAspect : asked.aspects, units)
  if (told.length > 0) return [...told, ...lineNote(one.hen)]
  return usual(asked) ? [henLine(one.hen, units)] : []
}
const everyHenAspect: readonly Aspect[] = ['eggs', 'size', 'temper', 'broody', 'hardiness', 'feed', 'maturity']

const likeliest = (crossed: Crossed): Case | undefined => crossed.cases[0]

function single(crossed: Crossed, asked: Asked, verdict: string): readonly Block[] {
  const [first, ...others] = crossed.cases
  if (!first) return []
  const ofTheHenOnly = asked.aspects.length > 0 && asked.aspects.every(isOfTheHen)
  const expected = known(crossed.sire) && known(crossed.dam) ? hen(first, asked) : []
  if (others.length === 0 || ofTheHenOnly || outcomes(crossed.cases).length === 1)
    return [...looks(first, asked), ...sexing(first, asked, verdict), ...expected]
  return [...caseBlocks(crossed.cases), ...otherWay(first.sexing), ...expected]
}

const verdictWords = {
  yes: 'can be sexed at hatch',
  partly: 'some can be sexed at hatch',
  no: 'cannot be sexed at hatch',
} as const

const briefly = { ...usualTelling, most: 2 }

/** One mating among several: name, verdict and chicks. */
function brief(crossed: Crossed, short: boolean): Line {
  const one = likeliest(crossed)
  const name = strong(capital(matingName(crossed.sire, crossed.dam)))
  if (!one) return [name]
  const given = crossed.cases.length > 1 && one.given ? ` if ${one.given}` : ''
  const verdict = `: ${verdictWords[one.sexing.verdict]}${given}.`
  if (short) return [name, verdict]
  const chicks =
    one.sexing.verdict === 'no'
      ? `Grown cocks ${adults(one.cockerels, briefly)}; hens ${adults(one.pullets, briefly)}.`
      : `Cockerels ${downs(one.cockerels, briefly)}; pullets ${downs(one.pullets, briefly)}. ${sure(one.sexing)}`
  return [name, `${verdict} ${chicks}`]
}

export function crossBlocks(answer: CrossAnswer, asked: Asked): Document {
  const [only, ...others] = answer.crosses
  const verdict = line(strong(capital(answer.summary)))
  if (!only) return [verdict]
  if (others.length > 0)
    return [verdict, numbered(answer.crosses.map((c) => brief(c, answer.crosses.length > mostInFull)))]
  return [verdict, restated(answer, only), ...single(only, asked, answer.summary), ...ruleBlocks(only)]
}

/** The mating spoken of, with the lines that were taken for granted. */
const restated = (answer: CrossAnswer, { sire, dam }: Crossed): Block =>
  line(faint(`${capital(withLines(matingName(sire, dam), answer.assumptions))}:`))
