// test/bot/render/reply.test.ts: what a person reads of a cross: verdict first, cases apart, no bare figure from memory, in his own units.
import { expect, test } from 'vitest'
import { reply } from '../../../bot/render/reply.ts'
import {
  asked,
  blackSexLink,
  cross,
  headSpotSign,
  hen,
  lookShare,
  plainManner,
  red,
  sexed,
  unsexed,
} from './samples.ts'

const lines = (text: string): readonly string[] => text.split('\n')
const bare = (html: string): string =>
  html
    .replace(/<[^>]*>/g, '\n')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&amp;', '&')
const words = (text: string): string =>
  text
    .replace(/^(?:- |\d+\. )/gm, '')
    .replace(/\s+/g, ' ')
    .trim()

test('the verdict is the first line, and ten lines suffice', () => {
  const answer = cross([blackSexLink])
  const { text } = reply(answer, asked())
  expect(lines(text)[0]).toBe(answer.summary)
  expect(lines(text).length).toBeLessThanOrEqual(10)
})

test('cockerels and pullets each have their line, with the sign and how sure it is', () => {
  const { text } = reply(cross([blackSexLink]), asked())
  expect(text).toMatch(/Cockerels: .*pale head spot/)
  expect(text).toMatch(/Pullets: black with a pale belly/)
  expect(text).toMatch(/[Hh]ead spot, at hatch/)
  expect(text).toContain('95 in 100')
})

test('text and html say the same words in the same order', () => {
  const answer = cross([blackSexLink], {
    cautions: [{ topic: 'surplus-males', text: 'Half of the chicks are cockerels: plan for them.' }],
    assumed: [{ kind: 'male-first', sire: 'Rhode Island Red', dam: 'Barred Plymouth Rock' }],
  })
  const { text, html } = reply(answer, asked())
  expect(words(bare(html))).toBe(words(text))
})

test('a figure that rests on memory alone is hedged and called a judgement; one of common practice says so', () => {
  const fromMemory = { ...sexed, signs: [{ ...headSpotSign, status: 'from memory' as const }] }
  const hedged = reply(cross([{ ...blackSexLink, sexing: fromMemory }]), asked()).text
  expect(hedged).toMatch(/[Pp]erhaps 95 in 100 .*judgement/)
  expect(hedged).not.toContain('about 95')
  expect(reply(cross([blackSexLink]), asked()).text).toContain('as keepers find')
})

test('egg numbers from memory are a range with a hedge word, never one figure', () => {
  const { text } = reply(cross([{ ...blackSexLink, hen: { ...hen, status: 'from memory' } }]), asked())
  expect(text).toContain('perhaps 200 to 270 eggs')
  expect(text).not.toContain('240')
})

test('weights come in both units, or in the one the keeper used', () => {
  const answer = cross([blackSexLink])
  const weight = (units: 'metric' | 'imperial' | 'both') =>
    /2\.6 kg(?: \(5\.7 lb\))?|5\.7 lb/.exec(reply(answer, asked({ manner: { ...plainManner, units } })).text)?.[0]
  expect(weight('both')).toBe('2.6 kg (5.7 lb)')
  expect(weight('metric')).toBe('2.6 kg')
  expect(weight('imperial')).toBe('5.7 lb')
})

test('what the bot does not know of a bird is told as cases in words of belief, not as a share of chicks', () => {
  const white = { ...blackSexLink, weight: 0.7, given: 'the hens are silver', howToTell: 'Hatch two or three sons.' }
  const other = { ...white, weight: 0.3, given: 'the hens are gold', sexing: unsexed, pullets: white.cockerels }
  const { text } = reply(cross([white, other]), asked())
  expect(text).toMatch(/If the hens are silver \(likely\): .*sexed/)
  expect(text).toMatch(/If the hens are gold \(less likely\): .*no sexing/)
  expect(text).toContain('Hatch two or three sons.')
  expect(text).not.toMatch(/\b(?:70|30)\b/)
})

test('“otherwise” comes after what it is other than, however likely', () => {
  const rest = { ...blackSexLink, weight: 0.9, given: 'otherwise', sexing: unsexed }
  const { text } = reply(cross([rest, { ...blackSexLink, weight: 0.1, given: 'the hens are silver' }]), asked())
  expect(text.indexOf('If the hens are silver (unlikely)')).toBeGreaterThan(0)
  expect(text.indexOf('Otherwise (')).toBeGreaterThan(text.indexOf('If the hens are silver (unlikely)'))
})

test('several looks of one sex come with their shares, as keepers say them', () => {
  const blues = [
    lookShare(0.25, { colour: 'black', words: 'black' }, 'black'),
    lookShare(0.5, { colour: 'blue-grey', words: 'blue-grey' }, 'blue'),
    lookShare(0.25, { colour: 'smoky white', words: 'smoky white' }, 'splash'),
  ]
  const { text } = reply(cross([{ ...blackSexLink, cockerels: blues, pullets: blues, sexing: unsexed }]), asked())
  expect(text).toContain('half blue, a quarter black, a quarter splash')
})

test('chicks that die in the egg are told as a share of the embryos', () => {
  const { text } = reply(cross([{ ...blackSexLink, diesInEgg: 0.25 }]), asked())
  expect(text).toMatch(/a quarter of the embryos die/)
})

test('symbols come only when used or asked for', () => {
  expect(reply(cross([blackSexLink]), asked()).text).not.toContain('B/b+')
  expect(reply(cross([blackSexLink]), asked({ aspects: ['symbols'] })).text).toContain('B/b+')
  const used = asked({
    manner: { ...plainManner, symbols: true },
    matings: [{ sire: red, dam: { genotype: { B: ['B'] } } }],
  })
  expect(reply(cross([blackSexLink]), used).text).toContain('B/b+')
})

test('sources come only when asked why or for more, and memory is never cited', () => {
  const sources = [
    { ref: 'Punnett 1911', status: 'read' as const },
    { ref: 'an old friend', status: 'from memory' as const },
  ]
  const answer = cross([blackSexLink], { sources })
  expect(reply(answer, asked()).text).not.toContain('Punnett')
  const why = reply(answer, asked({ aspects: ['why'] })).text
  expect(why).toContain('Punnett 1911')
  expect(why).not.toContain('an old friend')
})

test('at most one caution, unless welfare was asked for', () => {
  const cautions = [
    { topic: 'lethal' as const, text: 'First caution.' },
    { topic: 'by-laws' as const, text: 'Second caution.' },
  ]
  const answer = cross([blackSexLink], { cautions })
  expect(reply(answer, asked()).text).not.toContain('Second caution.')
  expect(reply(answer, asked({ aspects: ['welfare'] })).text).toContain('Second caution.')
})

test('several crosses are one numbered line each', () => {
  const one = cross([blackSexLink])
  const crosses = ['Barred Plymouth Rock', 'Delaware'].map((breed) => ({
    sire: red,
    dam: { breed },
    cases: [blackSexLink],
  }))
  const { text } = reply({ ...one, summary: 'Both can be sexed.', crosses }, asked())
  expect(text).toMatch(/^1\. Rhode Island Red over Barred Plymouth Rock/m)
  expect(text).toMatch(/^2\. Rhode Island Red over Delaware/m)
})

test('silence is empty', () => {
  expect(reply({ kind: 'silent' }, { kind: 'silent' })).toEqual({ text: '', html: '' })
})
