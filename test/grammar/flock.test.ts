// test/grammar/flock.test.ts: a flock told by name over several messages: told, asked about, corrected, listed and dropped.
import { describe, expect, test } from 'vitest'
import { resolve } from '../../core/resolve.ts'
import { emptyContext } from '../../grammar/context.ts'
import { understand } from '../../grammar/understand.ts'

/** The last answer of a conversation, and the flock behind it. */
function talk(...messages: readonly string[]) {
  let context = emptyContext()
  let question = understand('', context).question
  for (const message of messages) ({ question, context } = understand(message, context))
  return { question, answer: resolve(question), flock: context.flock }
}
const summary = (...messages: readonly string[]): string => {
  const { answer } = talk(...messages)
  return answer.kind === 'silent' ? '' : 'summary' in answer ? answer.summary : answer.kind
}
const lines = (...messages: readonly string[]): readonly string[] => {
  const { answer } = talk(...messages)
  return answer.kind === 'fact' ? answer.says : [answer.kind]
}

const rex = [
  'my cock is called Rex. hes black. my hens are Dot and Flo, both black',
  'Rex x Dot: 8 chicks, 2 white',
] as const

describe('birds told in one breath, and what is asked of them', () => {
  test('he, both, and names in a row', () => {
    expect(lines(rex[0])).toEqual(['Rex: black cock.', 'Dot: black hen.', 'Flo: black hen.'])
  })
  test('a brood of a pair', () => {
    expect(lines(...rex).at(-1)).toBe('Chicks of Rex and Dot: 2 white, 6 clear.')
  })
  test('told and asked in one message', () => {
    expect(summary('bert x daisy gave 3 white of 11, does bert carry white?')).toBe(
      'Certain: Bert carries recessive white, and so does Daisy.',
    )
  })
  test('his parents of no name', () => {
    expect(lines('Sid is black and his parents are both black')).toEqual([
      'Sid: black bird, out of the dam of Sid by the sire of Sid.',
      'The sire of Sid: black cock.',
      'The dam of Sid: black hen.',
    ])
  })
  test('a bird that nobody told of yet is asked about by its name', () => {
    expect(summary('is Bert a carrier of recessive white?')).toContain('whether Bert carries recessive white')
  })
})

describe('the debate goes on', () => {
  test('9 black chicks of a proven cock: (3/4)^9 to 1', () => {
    const { answer } = talk(...rex, 'Rex over Flo 9 chicks all black', 'is flo split to white')
    expect(answer).toMatchObject({ kind: 'carrier', nowFraction: '19683/281827' }) // 3^9 / (3^9 + 4^9)
  })
  test('"is flo?" is of the same trait', () => {
    expect(talk(...rex, 'is rex split to white', 'is flo?').question).toMatchObject({
      kind: 'carrier',
      of: 'Flo',
      allele: 'c',
    })
  })
  test('"he" is the bird asked about before', () => {
    expect(
      talk('Bert is out of Daisy by Sid', 'Daisy is lavender', 'is Bert split to lavender', 'does he carry white')
        .question,
    ).toMatchObject({
      kind: 'carrier',
      of: 'Bert',
      allele: 'c',
    })
  })
  test('a correction takes the place of what it corrects', () => {
    expect(lines(...rex, 'no, Rex x Dot gave 1 white of 8').at(-1)).toBe('Chicks of Rex and Dot: 1 white, 7 clear.')
  })
})

describe('listed and dropped', () => {
  test.each(['list', 'List', 'my birds', 'list my birds', 'show my flock'])('%s', (message) => {
    expect(lines(...rex, message)).toHaveLength(4)
  })
  test('with nothing told, the list says so', () => {
    expect(lines('List')[0]).toMatch(/^You have told me of no birds yet/u)
  })
  test('a brood by its parents, and a bird with its broods', () => {
    expect(talk(...rex, 'drop the brood of Rex and Dot').flock).toMatchObject({ birds: { length: 3 }, broods: [] })
    expect(talk(...rex, 'delete Dot').flock).toMatchObject({ birds: { length: 2 }, broods: [] })
  })
})

describe('who is the father', () => {
  const ran = 'Bert and Sid both ran with Molly, Molly is lavender, 3 of 8 chicks were lavender'
  test('a cock out of a lavender hen against one of black parents: 3/4 x 15/16 against 3/8', () => {
    // Bert: his sire has a copy as likely as not, so he has just one in 3 of 4 cases; of 8 chicks 3 lavender then as for Sid.
    // Sid: each parent has a copy as likely as not; a black chick of theirs comes in 15 of 16 cases, a black carrier in 6 of 16.
    const { answer } = talk(
      "Bert's mum is Daisy. Daisy is lavender. Sid is black and his parents are both black.",
      ran,
      'who is the father Bert or Sid',
    )
    const odds = (3 / 4) * (15 / 16)
    expect(answer).toMatchObject({ kind: 'carrier', allele: 'lav', rivals: [{ sire: 'Bert' }, { sire: 'Sid' }] })
    expect(answer.kind === 'carrier' && answer.rivals[0]!.odds).toBeCloseTo(odds / (odds + 3 / 8), 12)
  })
  test('told and asked at once; of whom the same is known, the chicks do not tell', () => {
    expect(summary(`${ran}. Who is the father?`)).toBe('The chicks do not tell Bert from Sid.')
  })
  test('chicks whose sire is open prove nothing of either', () => {
    expect(talk(ran, 'does Bert carry lavender?').answer).toMatchObject({ kind: 'carrier', now: null })
  })
})

describe('which way linked genes lie in the cock', () => {
  const cases = (text: string) => {
    const { answer } = talk(text)
    return answer.kind === 'cross' ? answer.crosses[0]!.cases.map(({ together }) => together) : answer.kind
  }
  const both = { one: 'slow feathering', other: 'silver', both: true }
  test.each([
    ['my cock is S K on one Z and s k on the other, over gold fast hens', both],
    ['S/s+ K/k+ cock in coupling over s+/- k+/- hens', both],
    ['S/s+ K/k+ cock in repulsion over s+/- k+/- hens', { ...both, both: false }],
    ['my cock has S k on one Z and s K on the other, over s+/- k+/- hens', { ...both, both: false }],
    ['cock with silver from his dad and slow feathering from his mum over gold fast hens', { ...both, both: false }],
    ['cock with silver and slow feathering both from his dad over gold fast hens', both],
  ])('%s', (text, wanted) => {
    expect(cases(text)).toEqual([[wanted]])
  })
  test('where nobody tells, both ways stand as cases', () => {
    expect(cases('cock S/s+ K/k+ over hen s+/- k+/-')).toEqual([[both], [{ ...both, both: false }]])
  })
})
