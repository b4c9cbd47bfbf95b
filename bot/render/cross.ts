// bot/render/cross.ts: what a mating gives, verdict first: one mating in full, several in a line or two each.
import { caseBlocks, outcomes } from './cases.ts'
import { inBrief } from './brief.ts'
import { carriedUnseen } from './carried.ts'
import { linkedWords } from './linked.ts'
import { forms } from './chicks.ts'
import { faint, line, numbered, strong } from './document.ts'
import { eggCaseBlocks, shellHangs } from './eggCases.ts'
import { hedged } from './hedged.ts'
import { henAspects, henLine, henWords, isOfTheHen, lineNote, vigour } from './hen.ts'
import { because, howToRead, later, otherWay, pens, reason, spoilers } from './signs.ts'
import { matingName } from './birds.ts'
import { capital } from './tame.ts'
import { ruleBlocks } from './rules.ts'
import { withLines } from './takenLines.ts'
import { looksOf } from './lookCases.ts'
import { combAndShank, inSymbols } from './sexes.ts'
import type { Block, Document } from './document.ts'
import type { BirdSeen, Case, CrossAnswer, Crossed } from '../../core/answer.ts'
import type { Aspect } from '../../core/question.ts'
import { tellingOf, usual, wants, type Asked } from './asked.ts'

/** Crosses beyond this many get the verdict alone. */
const mostInFull = 4

/** What the chicks are, as far as it was asked for. */
function looks(cases: readonly [Case, ...Case[]], asked: Asked): readonly Block[] {
  const [one] = cases
  const all = usual(asked) || wants(asked, 'more', 'chicks', 'shares')
  const [down, grown] = [all || wants(asked, 'sexing'), all || wants(asked, 'adults')]
  const telling = tellingOf(asked)
  const form = forms(one, telling.say)
  return [
    ...(down || grown ? looksOf(cases, { down, grown }, telling) : []),
    ...(grown && form ? [line(`Also, ${form}.`)] : []),
    ...(grown ? carriedUnseen(one, telling.say) : []),
    ...(down || grown ? linked(one) : []),
    ...(grown ? hedged(one, wants(asked, 'more', 'adults') ? 3 : 1) : []),
    ...(wants(asked, 'comb', 'more') ? combAndShank(one, telling) : []),
    ...(asked.manner.symbols || wants(asked, 'symbols')
      ? inSymbols(one, telling, wants(asked, 'symbols') ? 'all' : asked.alleles)
      : []),
  ]
}

const linked = (one: Case): readonly Block[] => {
  const words = linkedWords(one)
  return words === '' ? [] : [line(words)]
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

/** `bredOn`: a parent is itself a cross, so what the first cross gained is partly lost; that is said beside the eggs. */
function hen(one: Case, asked: Asked, verdict: string, bredOn: boolean): readonly Block[] {
  if (!one.hen) return []
  const { units } = asked.manner
  const everything = wants(asked, 'more')
  const told = henAspects(one.hen, everything ? everyHenAspect : asked.aspects, units, verdict)
  const apart = wants(asked, 'eggs', 'more', 'why') ? lineNote(one.hen) : []
  if (usual(asked)) return [henLine(one.hen, units)]
  const gained = wants(asked, 'more', 'why') || (bredOn && wants(asked, 'eggs'))
  return [...told, ...apart, ...(gained && !wants(asked, 'vigour') ? vigour(one.hen) : [])]
}
const everyHenAspect: readonly Aspect[] = ['eggs', 'size', 'temper', 'broody', 'hardiness', 'feed', 'maturity']

/** Where the shells hang on what a parent carries, they are told case by case. */
function daughters({ cases, sire, dam }: Crossed, first: Case, asked: Asked, verdict: string): readonly Block[] {
  const shells =
    (usual(asked) || wants(asked, 'eggs', 'shell', 'more')) && shellHangs(cases) ? eggCaseBlocks(cases) : []
  const own = shells.length > 0 && first.hen ? { ...first, hen: { ...first.hen, shell: [] } } : first
  return [...hen(own, asked, verdict, Boolean(sire.cross ?? dam.cross)), ...shells]
}

function single(crossed: Crossed, asked: Asked, verdict: string): readonly Block[] {
  const [first, ...others] = crossed.cases
  if (!first) return []
  const ofTheHenOnly = asked.aspects.length > 0 && asked.aspects.every(isOfTheHen)
  const expected = known(crossed.sire) && known(crossed.dam) ? daughters(crossed, first, asked, verdict) : []
  if (others.length === 0 || ofTheHenOnly || outcomes(crossed.cases, asked).length === 1)
    return [...looks([first, ...others], asked), ...sexing(first, asked, verdict), ...expected]
  return [...caseBlocks(crossed.cases, asked), ...otherWay(first.sexing), ...expected]
}

/** Where only the daughters are asked about, what each mating gives of that. */
function ofDaughters({ cases }: Crossed, asked: Asked): string | undefined {
  const hen = cases[0]?.hen
  if (!hen || asked.aspects.length === 0 || !asked.aspects.every(isOfTheHen)) return undefined
  return henWords(hen, asked.aspects, asked.manner.units)
}

/** One line each; the reasons once, where they were asked for. */
function several({ crosses }: CrossAnswer, asked: Asked): readonly Block[] {
  const short = crosses.length > mostInFull
  const reasons = new Set(crosses.flatMap(({ cases }) => cases.slice(0, 1).map(({ sexing }) => reason(sexing))))
  const why = wants(asked, 'why', 'more')
    ? [...reasons].filter(Boolean).map((words) => line(strong('Why: '), `${words}.`))
    : []
  const told = crosses.map((one) => ({
    name: capital(matingName(one.sire, one.dam)),
    words: ofDaughters(one, asked) ?? inBrief(one, short),
  }))
  const once = [...new Map(told.map((one) => [one.name + one.words, one])).values()]
  return [numbered(once.map(({ name, words }) => [strong(name), `: ${words}`])), ...why]
}

export function crossBlocks(answer: CrossAnswer, asked: Asked): Document {
  const [only, ...others] = answer.crosses
  const verdict = line(strong(capital(answer.summary)))
  if (!only) return [verdict]
  if (others.length > 0) return [verdict, ...several(answer, asked)]
  const told = [...single(only, asked, answer.summary), ...(wants(asked, 'why') ? ruleBlocks(only) : [])]
  return [verdict, ...restated(answer, only, told)]
}

/** The mating spoken of, with the lines that were taken for granted. */
function restated(answer: CrossAnswer, { sire, dam }: Crossed, told: readonly Block[]): readonly Block[] {
  const name = capital(withLines(matingName(sire, dam), answer.assumptions))
  return [line(faint(`${name}${told.length > 0 ? ':' : '.'}`)), ...told]
}
