// grammar/read/needs.ts: so many eggs for so many people from so many hens: which of the three are told, and whether that is what is asked.
import { numberWords } from '../words/small.ts'
import type { Reading } from '../reading.ts'
import type { LinesQuestion } from '../../core/question.ts'

export type Needs = Pick<LinesQuestion, 'eggsPerWeek' | 'people'>

/** Words looked through: a need is told in one breath. */
const mostWords = 80
const said = ({ words }: Reading): string => words.slice(0, mostWords).join(' ')

const number = String.raw`(\d+|a|one|two|three|four|five|six|seven|eight|nine|ten|twelve|couple)`
const often = String.raw`(?:a|per|each|every|\/)? ?(day|week|wk|daily|weekly)`
const dozens = new RegExp(`\\b${number} (?:or \\w+ )?(?:dozen|doz|dz)(?: \\w+){0,2}? ${often}\\b`, 'u')
const eggs = new RegExp(`\\b${number}(?: or \\w+)? (?:fresh |good )?eggs? ${often}\\b`, 'u')

const valueOf = (word = ''): number => (word === 'a' ? 1 : word === 'couple' ? 2 : (numberWords[word] ?? Number(word)))
const perWeek = (word = ''): number => (word.startsWith('da') ? 7 : 1)

function eggsPerWeek(text: string): number | undefined {
  const dozen = dozens.exec(text)
  if (dozen) return valueOf(dozen[1]) * 12 * perWeek(dozen[2])
  const found = eggs.exec(text)
  return found ? valueOf(found[1]) * perWeek(found[2]) : undefined
}

const mouths = new RegExp(
  `\\b(?:family of|household of|feeds?|feeding) ${number}\\b(?! (?:hens|birds|chickens))|\\b${number} (?:people|of us|adults|mouths|persons|in the (?:house|family|household))\\b|\\b(the two of us|just the two|me and (?:the |my )(?:wife|husband|missus|partner)|us both|both of us)\\b`,
  'u',
)
function people(text: string): number | undefined {
  const found = mouths.exec(text)
  if (!found) return undefined
  return found[3] === undefined ? valueOf(found[1] ?? found[2]) : 2
}

const within = (value: number | undefined, most: number): value is number =>
  value !== undefined && Number.isFinite(value) && value >= 1 && value <= most

export function needsIn(reading: Reading): Needs {
  const text = said(reading)
  const [wanted, mouthsTold] = [eggsPerWeek(text), people(text)]
  return {
    ...(within(wanted, 5000) ? { eggsPerWeek: wanted } : {}),
    ...(within(mouthsTold, 200) ? { people: mouthsTold } : {}),
  }
}

const howMany =
  /\bhow many (?:\w+ )?(?:hens|birds|chickens|chooks|layers|girls|pullets|chicks|ladies)\b|\bhow many (?:do|would|should|will) (?:i|we|you) (?:\w+ )?(?:need|keep|get|want|have)\b|\bhow many for\b/u
const howManyEggs =
  /\bhow many (?:dozen|doz|dz)(?: eggs)? (?:\w+ ){0,4}(?:(?:a|per|each|every) (?:day|week|wk)|daily|weekly)\b|\bhow many eggs (?:a|per|each|every|\/) ?(?:day|week|wk|month)|\bhow many eggs (?:\w+ ){0,6}(?:a|per|each|every) (?:day|week|wk)\b|\beggs (?:a|per|each) (?:day|week|wk) (?:from|off|out of|with)\b/u

/** "how many hens for 4 dozen a week", "are 2 hens enough for a family of 4", "how many eggs a week from 6 hens". */
export function asksNeeds(reading: Reading, hens: number | undefined): boolean {
  const text = said(reading)
  const { eggsPerWeek: wanted, people: mouthsTold } = needsIn(reading)
  const ofEggs = reading.scene.aspects.includes('eggs') || /\beggs?\b|\bdozen\b|\blay(?:ers|ing)?\b/u.test(text)
  const fowl = /\b(?:hens|chickens|chooks|layers)\b/u.test(text)
  const told = wanted !== undefined || (mouthsTold !== undefined && (ofEggs || fowl))
  if (told && howMany.test(text)) return true
  if (told && hens !== undefined && /\b(?:enough|do it|plenty|cover|keep up)\b/u.test(text)) return true
  return hens !== undefined && howManyEggs.test(text)
}
