// bot/render/partners.ts: which mates to get, best first, one reason each, and what to leave alone.
import { birdName } from './birds.ts'
import { bullets, line, numbered, strong } from './document.ts'
import { estimate } from './measures.ts'
import { saidIn, signWords, sure } from './signs.ts'
import { capital } from './tame.ts'
import type { Document, Line } from './document.ts'
import type { PartnersAnswer } from '../../core/answer.ts'
import { wants, type Asked } from './asked.ts'

type Choice = PartnersAnswer['best'][number]
const usualChoices = 5
const end = (words: string): string => (/[.!?]$/.test(words) ? words : `${words}.`)

/** @param before the choice above: the same reason is not told twice */
function choice(one: Choice, before: Choice | undefined, several: boolean): Line {
  const part = one.part === 'sire' ? 'cock' : 'hens'
  const beside = several ? ` with your ${birdName(one.with)}` : ''
  const eggs = one.hen ? ` Daughters: ${estimate(one.hen.eggsFirstYear, one.hen.status, 'eggs a year')}.` : ''
  const condition = one.condition ? ` Only if ${end(one.condition)}` : ''
  const why = before?.why === one.why ? 'likewise.' : end(one.why)
  return [strong(`${capital(birdName(one.bird))} ${part}${beside}: `), `${why}${condition}${eggs}`]
}

/** How to read the chicks of the best choice. */
function reading(best: Choice | undefined): Document {
  const [sign] = best?.sexing?.signs ?? []
  if (!best?.sexing || !sign) return []
  const how = saidIn(best.why, sign) ? `${sign.window}. ` : `by the ${signWords(sign)} `
  return [line(strong('Read the first '), how, sure(best.sexing))]
}

export function partnersBlocks(answer: PartnersAnswer, asked: Asked): Document {
  const most = wants(asked, 'more') ? answer.best.length : usualChoices
  const several = answer.for.length > 1
  const named = answer.sire.length > 0 && answer.dam.length > 0 // the keeper's own choices: each is told of
  const avoid = answer.avoid.slice(0, wants(asked, 'more', 'why') ? 9 : named ? 5 : 2)
  return [
    line(strong(capital(answer.summary))),
    ...(answer.best.length > 0
      ? [numbered(answer.best.slice(0, most).map((one, i) => choice(one, answer.best[i - 1], several)))]
      : []),
    ...reading(answer.best[0]),
    ...(avoid.length > 0
      ? [line('Not for this:'), bullets(avoid.map((a) => [`${birdName(a.bird)}: ${end(a.why)}`]))]
      : []),
  ]
}
