// test/core/topics.test.ts: the facts and beliefs: each is found by how keepers ask for it, stands on a source, and hedges what nobody read.
import { describe, expect, test } from 'vitest'
import { published } from '../published.ts'
import { cueWeight, topicNamed, topics, topicsIn } from '../../core/topics.ts'
import { cueWords } from '../../core/topics/cues.ts'

const first = (text: string): readonly string[] => {
  const found = topicsIn(text)
  return found.filter(({ weight }) => weight === found[0]?.weight).map(({ id }) => id)
}

test('there are at least eighty records', () => {
  expect(topics.length).toBeGreaterThanOrEqual(80)
})

test('each question of a record leads to that record and to no other as strongly', () => {
  for (const { id, asks } of topics) for (const ask of asks) expect([ask, first(ask)]).toEqual([ask, [id]])
})

/** Beliefs that keepers bring, in words of my own, with the record that answers each. */
const beliefs = [
  ['is a barred roo over red hens the same as red roo over barred hens, sex link wise', 'barred-cock-on-red'],
  ['will any white hen do for red sex links', 'any-white-hen'],
  ['is all white the same gene in chickens', 'kinds-of-white'],
  ['do sexlinks breed true', 'sex-links-breed-true'],
  ['does a white spot always mean a rooster', 'head-spot-not-always-male'],
  ['do my gold hens carry silver', 'gold-hen-silver'],
  ['black rooster on silver hens sexable', 'black-cock-on-silver'],
  ['lavender or blue, same colour right', 'lavender-or-blue'],
  ['do split birds look different', 'splits-look-different'],
  ['can a new rooster change the egg color of my hens', 'cock-changes-eggs-now'],
  ['pea comb so blue eggs for sure', 'pea-comb-blue-egg'],
  ['do white ear lobes mean white eggs', 'earlobe'],
  ['is an easter egger the same as an ameraucana', 'easter-egger-ameraucana'],
  ['the percentages are a promise arent they', 'percentages'],
  ['feather sexing any chick', 'wing-any-chick'],
  ['do pointy eggs hatch cockerels', 'egg-shape'],
  ['can incubator temperature make more pullets', 'incubator-temperature'],
  ['old rooster gone, how long are the eggs still fertile', 'stored-sperm'],
  ['is frizzle x frizzle fine', 'frizzle-x-frizzle'],
  ['legbar roo for sexable olive eggers', 'legbar-cock'],
  ['are blue sexlinks as easy as the black ones', 'blue-sex-link-spot'],
  ['do heritage hens lay longer', 'heritage-lays-longer'],
] as const

test.each(beliefs)('“%s” is answered by %s', (text, id) => {
  expect(first(text)).toEqual([id])
})

test('the beliefs that are wrong are called so in their first word', () => {
  for (const { id, verdict, says } of topics) {
    if (verdict === 'false') expect([id, says[0]!.startsWith('No')]).toEqual([id, true])
    if (verdict === 'true') expect([id, says[0]!.startsWith('Yes')]).toEqual([id, true])
    if (verdict === 'partly') expect([id, /^Partly|^No, better/.test(says[0]!)]).toEqual([id, true])
  }
})

test('chatter points to nothing', () => {
  for (const text of [
    'morning all, frost on the coop today',
    'i hate mondays',
    'that roo is a legend',
    'Predator got 3 last night',
    '',
  ])
    expect([text, topicsIn(text)]).toEqual([text, []])
})

describe('every record', () => {
  test('gives its verdict in a line, and sentences that stand alone', () => {
    for (const { id, says } of topics) {
      expect([id, says[0]!.length <= 160]).toEqual([id, true])
      for (const words of says) {
        expect([id, words, /^[A-Z].*[.!]$/.test(words)]).toEqual([id, words, true])
        expect([id, /^(But|And|Also|Therefore|However)\b/.test(words)]).toEqual([id, false])
      }
    }
  })
  test('stands on a source; with nothing read or practised behind it, a figure has a hedge word', () => {
    const hedge = /about|roughly|mostly|around|nearly|often|usually|some|reckon|as keepers/i
    for (const { id, says, sources } of topics) {
      expect([id, sources.length > 0]).toEqual([id, true])
      if (sources.some(({ status }) => status !== 'from memory')) continue
      for (const words of says)
        if (/\d/.test(words.replace(/\b[A-Za-z]\S*\d\S*/g, '')))
          expect([id, words, hedge.test(words)]).toEqual([id, words, true])
    }
  })
  test('has cues of its own: no cue of one is the cue of another', () => {
    const owner = new Map<string, string>()
    for (const { id, cues } of topics)
      for (const cue of cues) {
        const key = cue.toSorted().join(' ')
        expect([key, owner.get(key) ?? id]).toEqual([key, id])
        owner.set(key, id)
      }
  })
})

/** Figures that hurt if wrong, entered again from where they were read. */
const figures = [
  [
    'red-breed-marks',
    ['1,102', '85 in 100', '78 in 100'],
    'Poultry Science 16:422-425, 1937: 84.9 % of marked chicks female, 77.8 % of unmarked male',
  ],
  [
    'barred-rock-spot',
    ['about 80 in 100', '83 to 92'],
    'University of Kentucky, about 80 %; Poultry Science 18(4), 1939: 83.5, 86.1 and 91.8 %',
  ],
  [
    'stripes-sign',
    ['about 80 in 100'],
    'Poultry Science, Ontario Agricultural College, color sexing of Brown Leghorns',
  ],
  ['vent-sexing', ['97 to 98'], 'press report quoting the British Poultry Council: 97-98 %'],
  ['dna-sexing', ['176 right of 176'], 'Agriculture 13(3):677, 2023: 176 embryos, all agreeing'],
  [
    'tufted-x-tufted',
    ['a quarter', 'four in ten'],
    'Somes & Pabilonia 1981, J. Heredity 72:121-124: 41.6 % of heterozygous embryos',
  ],
  ['short-leg-x-short-leg', ['a quarter', 'two in three'], 'OMIA:000006-9031: living 2 creeper to 1 normal'],
  [
    'broodiness',
    ['0 in 100', '79 in 100', 'about 60', 'to 6'],
    'Romanov 2002: 0, 78.6, 61.6 and 56.8, back-cross 5.8 %',
  ],
  [
    'heterosis',
    ['1 in 100 at 43 weeks', '12 in 100 at 100 weeks'],
    'Ni et al. 2023: +1.4 % to 43 weeks, +11.6 % to 100 weeks',
  ],
  ['linkage', ['1 chick in 40'], 'Bitgood 1999, Poultry Science 78:1100-1101: S and K 2.4 %'],
] as const

for (const [id, parts, ref] of figures)
  published(`what is said of ${id} has the figures of its source`, { ref, status: 'read' }, () => {
    const said = topicNamed(id)!.says.join(' ')
    for (const part of parts) expect(said).toContain(part)
  })

describe('cues', () => {
  const frizzle = topicNamed('frizzle-x-frizzle')!
  test('a stem twice wants the word twice', () => {
    expect(cueWeight(frizzle, cueWords('my frizzle'))).toBe(0)
    expect(cueWeight(frizzle, cueWords('frizzle on frizzle'))).toBeGreaterThan(0)
  })
  test('roo, rooster and color are read as cock and colour', () => {
    expect(cueWords('A Rooster’s color? roo!')).toEqual(['a', 'cock', 's', 'colour', 'cock'])
  })
  test('a longer cue weighs more than a shorter one of the same record', () => {
    const topic = topicNamed('head-spot')!
    expect(cueWeight(topic, cueWords('how reliable is the head spot'))).toBeGreaterThan(
      cueWeight(topic, cueWords('head spot')),
    )
  })
})

test('looking cues up by their first letters finds what trying each of them finds', () => {
  for (const ask of topics.flatMap(({ asks }) => asks)) {
    const tried = topics.map((topic) => ({ id: topic.id, weight: cueWeight(topic, cueWords(ask)) }))
    const byId = (a: { id: string }, b: { id: string }): number => a.id.localeCompare(b.id)
    expect(topicsIn(ask).toSorted(byId)).toEqual(tried.filter(({ weight }) => weight > 0).toSorted(byId))
  }
})

test('an id that nobody wrote a record for is not found', () => {
  expect(topicNamed('phrenology')).toBeUndefined()
})
