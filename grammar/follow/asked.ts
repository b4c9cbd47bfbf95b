// grammar/follow/asked.ts: more is asked of the same birds: "eggs?", "how sure", "are the red ones girls".
import { aspectsOf } from '../read/common.ts'
import { shownAsked } from '../read/shownAsked.ts'
import { crossAgain } from './cross.ts'
import type { CrossQuestion } from '../../core/question.ts'
import type { Bird } from '../bird.ts'
import type { Reading } from '../reading.ts'

// --- the rest ---

/** "how sure", "why", "more", "in plain words", "eggs?". */
export function askedAgain(base: CrossQuestion, reading: Reading): CrossQuestion | undefined {
  const shown = shownAsked([], reading)
  if (shown.length > 0 && !reading.has('plain', 'sure'))
    return { ...crossAgain(base, base.matings, aspectsOf(reading), reading), shown }
  const aspects = aspectsOf(reading)
  if (reading.has('plain'))
    return { ...crossAgain(base, base.matings, aspects, reading), manner: { ...base.manner, symbols: false } }
  if (reading.has('sure')) return crossAgain(base, base.matings, ['sexing', ...aspects], reading)
  if (aspects.includes('symbols'))
    return { ...crossAgain(base, base.matings, aspects, reading), manner: { ...base.manner, symbols: true } }
  if (aspects.length > 0 || reading.words.includes('more'))
    return crossAgain(base, base.matings, aspects.length > 0 ? aspects : ['more'], reading)
  if (!areChicksAsked(reading.scene.birds, reading)) return undefined
  return crossAgain(base, base.matings, asksSexOf(reading) ? ['sexing'] : ['shares'], reading)
}

/** "so the red ones are girls": the colour tells the sex. */
export const asksSexOf = ({ words }: Reading): boolean =>
  /\bones? (?:(?:are|r|is|be|all|the|always) )*(?:girls?|boys?|hens?|pullets?|cockerels?|roos?|males?|females?)\b/u.test(
    words.join(' '),
  )

/** "will there be any lavenders", "do I get blue ones": chicks of that colour, and no other parent. */
export const areChicksAsked = (birds: readonly Bird[], reading: Reading): boolean =>
  asksSexOf(reading) || areColoursAsked(birds, reading)

const areColoursAsked = (birds: readonly Bird[], { words, scene }: Reading): boolean =>
  scene.changes.length === 0 &&
  birds.length > 0 &&
  birds.every(
    ({ sex, saidOf }) => sex === undefined && saidOf.parts.every(({ type }) => type === 'colour' || type === 'number'),
  ) &&
  /\b(?:any|will|would|be|get|come|all|hatch|some|none|how many|many)\b/u.test(words.join(' '))
