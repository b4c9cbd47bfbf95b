// bot/render/cross.ts: what a mating gives, verdict first: one mating in full, several in a line or two each.
import { caseBlocks, outcomes } from './cases.ts'
import { forms, adults, downs } from './chicks.ts'
import { faint, line, numbered, strong } from './document.ts'
import { henAspects, henLine, isOfTheHen, lineNote } from './hen.ts'
import { howToRead, later, otherWay, pens, spoilers, sure } from './signs.ts'
import { matingName } from './birds.ts'
import { bySex, byLeg, symbolsOf } from './sexes.ts'
import type { Block, Document, Line } from './document.ts'
import type { Case, CrossAnswer, Crossed } from '../../core/answer.ts'
import type { Aspect } from '../../core/question.ts'
import { usual, wants, type Asked } from './asked.ts'

/** Crosses beyond this many get the verdict alone. */
const mostInFull = 4

/** What the chicks are, as far as it was asked for. */
function looks(one: Case, asked: Asked): readonly Block[] {
  const all = usual(asked) || wants(asked, 'more', 'chicks', 'shares')
  const [down, grown] = [all || wants(asked, 'sexing'), all || wants(asked, 'adults')]
  const form = forms(one)
  return [
    ...(down || grown ? bySex(one, { down, grown }) : []),
    ...(grown && form ? [line(`Also: ${form}.`)] : []),
    ...(wants(asked, 'comb', 'more') ? byLeg(one) : []),
    ...(asked.manner.symbols || wants(asked, 'symbols') ? symbolsOf(one) : []),
  ]
}

/** How to tell the sexes, as far as it was asked for. */
function sexing(one: Case, asked: Asked, verdict: string): readonly Block[] {
  const told = one.sexing
  if (!usual(asked) && !wants(asked, 'sexing', 'why', 'more', 'reverse', 'chicks')) return []
  return [
    ...howToRead(told, wants(asked, 'more') ? 9 : 2, verdict),
    ...(told.verdict !== 'yes' || wants(asked, 'sexing', 'more') ? later(told) : []),
    ...(wants(asked, 'more') ? pens(told) : []),
    ...(wants(asked, 'why', 'more') ? spoilers(told) : []),
    ...otherWay(told),
  ]
}

function hen(one: Case, asked: Asked): readonly Block[] {
  if (!one.hen) return []
  const { units } = asked.manner
  const told = henAspects(one.hen, wants(asked, 'more') ? everyHenAspect : asked.aspects, units)
  if (told.length > 0) return [...told, ...lineNote(one.hen)]
  return usual(asked) ? [henLine(one.hen, units), ...lineNote(one.hen)] : []
}
const everyHenAspect: readonly Aspect[] = ['eggs', 'size', 'temper', 'broody', 'hardiness', 'feed', 'maturity']

/** One mating whose outcome does not hang on what the bot cannot know. */
const certain = (one: Case, asked: Asked, verdict: string): readonly Block[] => [
  ...looks(one, asked),
  ...sexing(one, asked, verdict),
  ...hen(one, asked),
]

const likeliest = (crossed: Crossed): Case | undefined => crossed.cases[0]

function single(crossed: Crossed, asked: Asked, verdict: string): readonly Block[] {
  const [first, ...others] = crossed.cases
  if (!first) return []
  const ofTheHenOnly = asked.aspects.length > 0 && asked.aspects.every(isOfTheHen)
  if (others.length === 0 || ofTheHenOnly || outcomes(crossed.cases).length === 1) return certain(first, asked, verdict)
  return [...caseBlocks(crossed.cases), ...otherWay(first.sexing), ...hen(first, asked)]
}

const verdictWords = {
  yes: 'can be sexed at hatch',
  partly: 'some can be sexed at hatch',
  no: 'cannot be sexed at hatch',
} as const

/** One mating among several: name, verdict and chicks. */
function brief(crossed: Crossed, short: boolean): Line {
  const one = likeliest(crossed)
  const name = strong(matingName(crossed.sire, crossed.dam))
  if (!one) return [name]
  const given = crossed.cases.length > 1 && one.given ? ` if ${one.given}` : ''
  const verdict = `: ${verdictWords[one.sexing.verdict]}${given}.`
  if (short) return [name, verdict]
  const chicks =
    one.sexing.verdict === 'no'
      ? `Grown cocks ${adults(one.cockerels)}; hens ${adults(one.pullets)}.`
      : `Cockerels ${downs(one.cockerels)}; pullets ${downs(one.pullets)}. ${sure(one.sexing)}`
  return [name, `${verdict} ${chicks}`]
}

export function crossBlocks(answer: CrossAnswer, asked: Asked): Document {
  const [only, ...others] = answer.crosses
  const verdict = line(strong(answer.summary))
  if (!only) return [verdict]
  if (others.length > 0)
    return [verdict, numbered(answer.crosses.map((c) => brief(c, answer.crosses.length > mostInFull)))]
  return [verdict, ...restated(answer, only), ...single(only, asked, answer.summary)]
}

/** The mating spoken of, where the verdict does not name it. */
function restated(answer: CrossAnswer, { sire, dam }: Crossed): readonly Block[] {
  const named = [sire, dam].every((bird) => bird.breed && answer.summary.includes(bird.breed))
  return named ? [] : [line(faint(`${matingName(sire, dam)}:`))]
}
