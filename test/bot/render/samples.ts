// test/bot/render/samples.ts: answers made by hand for the tests of wording; each passes the schema before it is used.
import {
  Answer,
  type Case,
  type CrossAnswer,
  type Hen,
  type LookShare,
  type Sexing,
  type Sign,
} from '../../../core/answer.ts'
import type { Look } from '../../../core/looks/look.ts'
import type { CrossQuestion, Manner } from '../../../core/question.ts'

const span = (low: number, likely: number, high: number) => ({ low, likely, high })

export const look = (chick: Partial<Look['chick']>, adult: string): Look => ({
  chick: {
    colour: 'black',
    pattern: 'plain',
    belly: 'pale',
    extraWhite: false,
    headSpot: 'none',
    headSpotClear: 'clear',
    ground: 'hidden',
    groundClear: 'no',
    wing: 'fast',
    skin: 'light',
    words: 'black with a pale belly',
    ...chick,
  },
  plumage: {
    pattern: 'solid',
    black: 'black',
    red: 'none',
    barring: 'none',
    mottled: false,
    white: false,
    words: adult,
  },
  form: {
    comb: 'single',
    crest: 'none',
    muffs: 'none',
    feet: 'clean',
    feather: 'normal',
    neck: 'feathered',
    toes: 'four',
    tail: 'tailed',
    legs: 'normal',
    tufts: 'none',
    henFeathered: false,
  },
  shank: 'dark',
  skin: 'white',
  shellBlue: 'no',
  dies: 'no',
  rules: [],
  hedges: [],
})

export function lookShare(
  share: number,
  chick: Partial<Look['chick']>,
  adult: string,
  form: readonly string[] = [],
): LookShare {
  const whole = look(chick, adult)
  const { words, headSpot, wing } = whole.chick
  return {
    share,
    down: words,
    headSpot,
    adult,
    shank: 'dark',
    comb: 'single',
    feathering: wing,
    form,
    alleles: 'B/b+',
    look: whole,
  }
}

export const headSpotSign: Sign = {
  sign: 'head spot',
  window: 'at hatch',
  cockerel: 'a pale spot on the head',
  pullet: 'no spot on the head',
  accuracy: 0.95,
  basis: 'keepers',
  status: 'common practice',
}

export const sexed: Sexing = {
  verdict: 'yes',
  why: 'head spot tells',
  accuracy: 0.95,
  pulletsTrue: 0.94,
  cockerelsTrue: 0.96,
  readable: 1,
  signs: [headSpotSign],
  laterSign: null,
  breaks: ['white on the heads of unbarred chicks'],
  reverse: { verdict: 'no', says: 'all chicks barred, no sexing.' },
}
export const unsexed: Sexing = {
  ...sexed,
  verdict: 'no',
  why: 'both sexes come alike',
  accuracy: null,
  pulletsTrue: null,
  cockerelsTrue: null,
  readable: 0,
  signs: [],
  breaks: [],
  reverse: null,
}

export const hen: Hen = {
  eggsFirstYear: span(200, 240, 270),
  eggsByYear: [span(200, 240, 270), span(160, 190, 220)],
  ageFirstEggDays: span(140, 154, 175),
  shell: [{ colour: 'brown', share: 1 }],
  eggWeightGrams: span(54, 58, 62),
  bodyWeightKg: span(2.3, 2.6, 2.9),
  cockWeightKg: span(3, 3.4, 3.8),
  feedGramsPerDay: span(110, 120, 135),
  feedKgPerDozen: span(1.6, 1.9, 2.3),
  broody: { rate: span(0, 0.1, 0.2), words: 'seldom' },
  temper: 'calm',
  hardiness: { cold: 'good', heat: 'fair' },
  yearsWorthKeeping: null,
  liveability: span(0.85, 0.9, 0.95),
  carcassKg: span(1.6, 1.9, 2.2),
  line: '',
  status: 'common practice',
}

const cockerel = lookShare(1, { headSpot: 'small' }, 'black, barred')
const pullet = lookShare(1, {}, 'black with gold in the hackle')

export const blackSexLink: Case = {
  weight: 1,
  given: '',
  howToTell: '',
  cockerels: [cockerel],
  pullets: [pullet],
  diesInEgg: 0,
  sexing: sexed,
  hen,
}

export const red = { breed: 'Rhode Island Red' }
export const barred = { breed: 'Barred Plymouth Rock' }

export function cross(cases: readonly Case[], rest: Partial<CrossAnswer> = {}): CrossAnswer {
  const answer = Answer.parse({
    kind: 'cross',
    summary: 'Yes: Rhode Island Red over Barred Plymouth Rock can be sexed at hatch.',
    assumptions: [],
    assumed: [],
    cautions: [],
    sources: [],
    birds: [],
    sire: [red],
    dam: [barred],
    crosses: [{ sire: red, dam: barred, cases }],
    ...rest,
  })
  if (answer.kind !== 'cross') throw new Error('want a cross')
  return answer
}

export const plainManner: Manner = { symbols: false, units: 'both' }
export const asked = (rest: Partial<CrossQuestion> = {}): CrossQuestion => ({
  kind: 'cross',
  matings: [{ sire: red, dam: barred }],
  aspects: [],
  assumed: [],
  manner: plainManner,
  ...rest,
})
