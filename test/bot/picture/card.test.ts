// test/bot/picture/card.test.ts: the card of a cross: which rows it has, that its words stay in their boxes, that its caption says all.
import { Resvg } from '@resvg/resvg-js'
import { describe, expect, test } from 'vitest'
import { captionOf } from '../../../bot/render/picture/card/caption.ts'
import { cardOf } from '../../../bot/render/picture/card/card.ts'
import { drawCard } from '../../../bot/render/picture/card/draw.ts'
import { downs } from '../../../bot/render/picture/palette.ts'
import type { BirdSeen, Case, CrossAnswer } from '../../../core/answer.ts'
import { breeds } from '../../../core/breeds.ts'
import { blackSexLink, cross, hen, unsexed } from '../render/samples.ts'
import { shareOf, withLooks } from './looks.ts'

const blues = [
  shareOf(0.5, { chick: { colour: 'blue-grey', words: 'blue-grey' }, plumage: { black: 'blue' } }, { adult: 'blue' }),
  shareOf(
    0.25,
    { chick: { colour: 'smoky white', words: 'smoky white' }, plumage: { black: 'splash' } },
    { adult: 'splash: pale with blue flecks' },
  ),
  shareOf(0.25, {}, { adult: 'black' }),
]
const blueByBlue: Case = { ...withLooks(blackSexLink, blues, blues), sexing: unsexed }
const silver: Case = { ...blackSexLink, weight: 0.7, given: 'the hens are silver under the white, not black' }
const gold: Case = { ...blackSexLink, weight: 0.3, given: 'the hens are gold under the white', sexing: unsexed }

const samples: readonly (readonly [string, CrossAnswer])[] = [
  ['one case', cross([blackSexLink])],
  ['several looks', cross([blueByBlue])],
  ['two cases', cross([silver, gold])],
  ['several crosses', severalCrosses(5)],
]
function severalCrosses(count: number): CrossAnswer {
  const one = cross([blackSexLink])
  return { ...one, crosses: Array.from({ length: count }, () => one.crosses[0]!) }
}

const card = (answer: CrossAnswer) => cardOf(answer)!
const markupOf = (answer: CrossAnswer) => drawCard(card(answer), 'light').markup
const wordsIn = (markup: string): readonly string[] =>
  [...markup.matchAll(/data-words="([^"]*)"/g)].map(([, words = '']) => plain(words))
const plain = (escaped: string): string =>
  escaped.replaceAll('&#39;', "'").replaceAll('&quot;', '"').replaceAll('&amp;', '&')

test('where nothing is told of colours, every bird is the same grey with a question mark, and form still shows', () => {
  const drawing = (colour: 'black' | 'buff', told: boolean) => {
    const looks = [shareOf(1, { chick: { colour, words: colour } }, { adult: 'not told', down: 'not told' })]
    return markupOf(cross([{ ...withLooks(blackSexLink, looks, looks), sexing: unsexed, colourKnown: told }]))
  }
  expect(drawing('black', false)).toBe(drawing('buff', false))
  expect(drawing('black', true)).not.toBe(drawing('buff', true))
  const crested = [shareOf(1, { form: { crest: 'large' } }, { adult: 'not told', down: 'not told' })]
  const withCrest = markupOf(
    cross([{ ...withLooks(blackSexLink, crested, crested), sexing: unsexed, colourKnown: false }]),
  )
  expect(withCrest).not.toBe(drawing('black', false))
})

describe('rows', () => {
  test('a mating that hangs on nothing has one row and no condition', () => {
    const [{ rows } = { rows: [] }] = card(cross([blackSexLink])).crosses
    expect(rows.map(({ given, verdict }) => [given, verdict])).toEqual([['', 'yes']])
  })
  test('a case that depends on the parents makes two rows with its words, in words of belief', () => {
    const [{ rows } = { rows: [] }] = card(cross([silver, gold])).crosses
    expect(rows.map(({ given }) => given)).toEqual([
      'If the hens are silver under the white, not black (likely)',
      'If the hens are gold under the white (less likely)',
    ])
  })
  test('a case in which a keeper would do the same makes no second row; the text has it', () => {
    const same = { ...silver, weight: 0.3, given: 'the hens are silver and blue' }
    const [shown] = card(cross([silver, same])).crosses
    expect(shown?.rows).toHaveLength(1)
    expect(shown?.moreCases).toContain('in the text')
  })
  test('what the core calls the rest stands second as "Otherwise", and has no name when it stands alone', () => {
    const rest = { ...gold, weight: 0.7, given: 'otherwise' }
    const named = { ...silver, weight: 0.3 }
    const [both] = card(cross([rest, named])).crosses
    expect(both?.rows.map(({ given }) => given.split(' ')[0])).toEqual(['If', 'Otherwise'])
    const [lone] = card(cross([rest, { ...named, weight: 0.02 }])).crosses
    expect(lone?.rows.map(({ given }) => given)).toEqual([''])
    expect(lone?.moreCases).not.toBe('')
  })
  test('several looks of a sex come with their shares, commonest first; looks that are drawn alike are one', () => {
    const twice = [
      ...blues.slice(0, 1).map((one) => ({ ...one, share: 0.25, alleles: 'x' })),
      ...blues.slice(0, 1).map((one) => ({ ...one, share: 0.25 })),
      ...blues.slice(1),
    ]
    const [{ rows } = { rows: [] }] = card(cross([{ ...blueByBlue, cockerels: twice }])).crosses
    expect(rows[0]?.cockerels.chicks.map(({ share, words }) => `${share} ${words}`)).toEqual([
      'half blue-grey',
      'a quarter smoky white',
      'a quarter black with a pale belly',
    ])
    expect(rows[0]?.chicksAlike).toBe(true)
  })
  test('chicks in the same down whose wings tell them apart are not called alike; the wings are shown', () => {
    const [first] = blackSexLink.sexing.signs
    const wings = [{ ...first!, sign: 'wing feathers' as const, cockerel: 'all short', pullet: 'some long' }]
    const read = { ...blackSexLink.sexing, signs: wings }
    const pair = (['slow', 'fast'] as const).map((wing) => [shareOf(1, { chick: { wing } }, { down: 'black' })])
    const [one] = [{ ...withLooks(blackSexLink, pair[0]!, pair[1]!), sexing: read }]
    const [{ rows } = { rows: [] }] = card(cross([one])).crosses
    expect(rows[0]).toMatchObject({ chicksAlike: false, cockerels: { chicks: [{ wingRead: true }] } })
    expect(wordsIn(markupOf(cross([one])))).toEqual(expect.arrayContaining(['wing feathers', 'all short']))
    const twoRows = cross([
      { ...one, weight: 0.6, given: 'the hens are slow-feathering' },
      { ...one, weight: 0.4, given: 'the hens are fast-feathering', sexing: unsexed },
    ])
    const said = wordsIn(markupOf(twoRows))
    expect(said).toEqual(expect.arrayContaining(['wing feathers', 'all short', '♂ Cockerels: same down']))
    expect(captionOf(card(twoRows))).toContain('Cockerels: same down. Pullets: same down.')
  })
  test('the close view shows the kind on which the sign can be read, though another be commoner', () => {
    const pale = shareOf(
      0.7,
      { chick: { colour: 'pale yellow', headSpot: 'small', headSpotClear: 'no' } },
      { down: 'pale' },
    )
    const black = shareOf(0.3, { chick: { headSpot: 'small' } }, { down: 'black' })
    const markup = markupOf(cross([withLooks(blackSexLink, [pale, black], [pale])]))
    const lenses = markup.split('<clipPath').filter((part) => part.includes('<circle r="25"'))
    const lens = lenses.find((part) => part.startsWith(' id="aMl"'))
    expect(lens).toContain(downs.black.back)
    expect(lens).not.toContain(downs['pale yellow'].back)
  })
  test('a second case is "as above" only where the grown birds are the same too', () => {
    const gilded = gold.pullets.map((one) => ({ ...one, adult: 'gilded' }))
    const aboves = (second: Case) => card(cross([{ ...silver, weight: 0.6 }, second])).crosses[0]?.rows[1]?.asAbove
    expect(aboves({ ...gold, weight: 0.4 })).toBe(true)
    expect(aboves({ ...withLooks(gold, gold.cockerels, gilded), weight: 0.4 })).toBe(false)
  })
  test('comb and legs that all grown birds share are said once, and each kind keeps what is its own', () => {
    const frizzled = shareOf(
      0.5,
      { form: { feather: 'frizzled' } },
      { form: ['small crest', 'frizzled feather'], shank: 'white' },
    )
    const smooth = shareOf(0.5, {}, { form: ['small crest'], shank: 'white' })
    const dark = [frizzled, smooth].map((one) => ({ ...one, shank: 'dark' }))
    const [{ rows } = { rows: [] }] = card(cross([withLooks(blackSexLink, [frizzled, smooth], dark)])).crosses
    const [row] = rows
    expect(row?.allGrown).toEqual(['single comb', 'small crest'])
    expect([row?.cockerels.allGrown, row?.pullets.allGrown]).toEqual([['white shanks'], ['dark shanks']])
    expect(row?.cockerels.grown.map(({ lesser }) => lesser)).toEqual([['frizzled feather'], []])
  })
  test('what is remarked of every one of several crosses stands once, at the end', () => {
    const answer = cross([{ ...blackSexLink, sexing: { ...unsexed, laterSign: blackSexLink.sexing.signs[0]! } }])
    const shown = card({ ...answer, crosses: [answer.crosses[0]!, answer.crosses[0]!] })
    expect(shown.remarks).toHaveLength(1)
    expect(captionOf(shown).match(/Later \(/g)).toHaveLength(1)
  })
  test('a figure from memory stands with its hedge; one of common practice says so', () => {
    const sureOf = (one: Case) => card(cross([one])).crosses[0]?.rows[0]?.sure
    const signs = blackSexLink.sexing.signs.map((sign) => ({ ...sign, status: 'from memory' as const }))
    expect(sureOf({ ...blackSexLink, sexing: { ...blackSexLink.sexing, signs } })).toMatch(/^Perhaps .* judgement$/)
    expect(sureOf(blackSexLink)).toMatch(/^About 95 in 100 .* keepers find$/)
  })
})

/** Where the renderer itself says that the ink of each line lies. */
function inkOf(markup: string) {
  const lines = markup.match(/<path data-words[^>]*>/g) ?? []
  return lines.map((line) => {
    const [, box = '', whole = ''] = /data-box="([^"]*)"/.exec(line) ?? []
    const [left = 0, width = 0] = box.split(' ').map(Number)
    const ink = new Resvg(
      `<svg xmlns="http://www.w3.org/2000/svg" width="720" height="2000" viewBox="-180 -500 720 2000">${line}</svg>`,
      { font: { loadSystemFonts: false } },
    ).getBBox()
    return { words: /data-words="([^"]*)"/.exec(line)?.[1] ?? whole, left, right: left + width, ink }
  })
}

const longest = breeds
  .map(({ name }) => name)
  .toSorted((a, b) => b.length - a.length)
  .slice(0, 12)
const named = (sire: BirdSeen, dam: BirdSeen): CrossAnswer => {
  const answer = cross([
    { ...silver, given: `${sire.breed ?? 'the cock'} is pure for silver and ${dam.breed ?? 'the hens'} are not` },
    gold,
  ])
  return { ...answer, crosses: answer.crosses.map((one) => ({ ...one, sire, dam })) }
}

/** Lines whose ink lies outside their box by more than a pixel's edge, or that have no ink at all. */
const strayed = (answer: CrossAnswer) =>
  inkOf(markupOf(answer)).filter(
    ({ left, right, ink }) => !ink || ink.x < left - 0.6 || ink.x + ink.width > right + 0.6,
  )

describe('words stay in their boxes, by the renderer’s own measure', () => {
  test.each(longest)('%s on both sides', (breed) => {
    const bird = { breed, line: 'production' }
    expect(strayed(named(bird, bird))).toEqual([])
  })
  test('a bird bred from birds bred from birds', () => {
    const f1 = { cross: { sire: { breed: longest[0] }, dam: { breed: longest[1] } } }
    const f2 = { cross: { sire: f1, dam: f1 } }
    expect(strayed(named(f2, f2))).toEqual([])
  })
  test('a keeper’s own name in letters the font lacks, or in one endless word', () => {
    const odd = { name: `${'Kukkuruu'.repeat(12)} 🐓` }
    expect(strayed(named(odd, odd))).toEqual([])
    expect(wordsIn(markupOf(named(odd, odd))).join()).not.toContain('🐓')
  })
})

describe('the caption says all that the picture says', () => {
  test.each(samples)('%s', (_, answer) => {
    const caption = flat(captionOf(card(answer)))
    const said = wordsIn(markupOf(answer)).map((line) => flat(line.replace(/[♂♀…]/g, '')))
    expect(said.length).toBeGreaterThan(8)
    for (const line of said) expect(caption).toContain(line)
  })
  test('eggs and shells of the daughters are in it', () => {
    const caption = captionOf(
      card(cross([{ ...blackSexLink, hen: { ...hen, shell: [{ colour: 'olive', share: 1 }] } }])),
    )
    expect(caption).toContain('olive shells')
    expect(caption).toMatch(/about 240 eggs/)
  })
})
const flat = (text: string): string => text.toLowerCase().replaceAll(/\s+/g, ' ').trim()

test('the sexes differ by frame, side and facing, not by colour', () => {
  const markup = markupOf(cross([blackSexLink]))
  const frames = [...markup.matchAll(/<rect x="([\d.]+)"[^>]*width="166"[^>]*rx="(\d+)" fill="(#\w+)"/g)]
  expect(frames.map(([, x, corner]) => [x, corner])).toEqual([
    ['10', '4'],
    ['184', '16'],
  ])
  expect(new Set(frames.map(([, , , fill]) => fill)).size).toBe(1)
})

test('markup in a name is drawn as letters, never obeyed', () => {
  const markup = markupOf(named({ name: '<svg onload="x">' }, { breed: 'A & B' }))
  expect(markup).not.toContain('<svg onload')
  expect(wordsIn(markup)).toContain('A & B')
  expect(markup).toContain('&lt;svg onload')
})
