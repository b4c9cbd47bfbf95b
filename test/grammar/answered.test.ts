// test/grammar/answered.test.ts: messages written by one who had not seen the grammar: the right kind of answer about the right birds.
import { describe, expect, test } from 'vitest'
import { answered, messages, missing, rightKind } from './answered.ts'

/** Messages that are not understood right, by their beginning, each with the reason. */
const knownMisses: Readonly<Record<string, string>> = {
  'my barred rocks are from a hatchery and the rooster': 'the line told in another clause is not put to the hens',
  'black orp hen split for chocolate? no the COCK':
    'a question taken back in the same message is answered all the same',
  'what do you get with a marinez rooster black copper':
    'a name heard so wrong, and its colour behind the sex word, are not put together',
}
const isMissed = (text: string): boolean => Object.keys(knownMisses).some((start) => text.startsWith(start))

const all = messages()

test('there are messages of all 27 kinds', () => {
  expect(new Set(all.map(({ kind }) => kind)).size).toBe(27)
  expect(all.length).toBeGreaterThanOrEqual(270)
})

describe('the kind of answer counts, and the birds are those that were meant', () => {
  test.each(all.map((message) => [message.kind, message.text, message] as const))('%s: %s', (kind, text, message) => {
    const answer = answered(message)
    const found = { kind: rightKind(message, answer) ? kind : answer.kind, missing: missing(message, answer) }
    if (isMissed(text)) expect(found).not.toEqual({ kind, missing: [] })
    else expect(found).toEqual({ kind, missing: [] })
  })
})

const answerTo = (text: string) =>
  answered({ kind: '', text, before: undefined, kinds: [], places: { sire: [], dam: [], birds: [] } })

test('a cock out of a lavender hen carries lavender for certain: she has no other to give', () => {
  expect(answerTo('My black cock had a lavender mum. is he carrying')).toMatchObject({
    kind: 'carrier',
    allele: 'lav',
    now: 1,
  })
})

test.each([
  ['put a frizzle to smooth, 6 frizzled 6 smooth so is he pure', 'f+', 1],
  ['wyandotte cock over my RIR girls, 3 of 9 chicks have single combs, is he pure?', 'r+', 1],
  ['my wyandotte roo threw 2 single comb chicks out of 10, is he split for single comb?', 'r+', 1],
  ['pea comb rooster x single comb hens, 11 chicks all pea comb. homozygous?', 'p+', 1 / 2049],
  ['Is my barred cock single or double barred? out of black hens I got 4 barred and 3 black chicks', 'b+', 1],
  ['9 of 9 chicks barred from a barred cock over black hens is he double barred?', 'b+', 1 / 513],
  ['ameraucana roo over leghorn hens, 2 of 5 daughters lay white eggs. is he pure blue egg?', 'o+', 1],
  ['cream legbar cock over leghorns, 6 pullets lay blue. Is he pure for blue egg gene?', 'o+', 1 / 65],
  ['my cock gave 9 muffed chicks and no clean faced over leghorn hens. is he pure for muffs?', 'mb+', 1 / 513],
])('%s: whether he is pure is whether he carries %s', (text, allele, now) => {
  const answer = answerTo(text)
  expect(answer).toMatchObject({ kind: 'carrier', allele })
  expect(answer.kind === 'carrier' && answer.now).toBeCloseTo(now, 12)
})

test.each([
  ['White leghorn x rir: got 6 whites 6 not white'],
  ['My barred rock rooster on red hens gave 5 barred and 4 plain, why'],
])('%s: that parent is not pure', (text) => {
  expect(answerTo(text)).toMatchObject({ kind: 'fact', about: 'a parent that is not pure' })
})

test.each([
  ['barred rock hens, RIR roo: 5 barred and 4 plain', 'a barred hen has one copy and gives it to her sons alone'],
])('%s: nothing is odd, for %s', (text) => {
  expect(answerTo(text).kind).toBe('cross')
})

test('a breed that is ruled out is not offered', () => {
  const answer = answerTo('what rooster goes over delawares for sexlinked chicks besides rir')
  const breeds = answer.kind === 'partners' ? answer.best.map(({ bird }) => bird.breed) : []
  expect(breeds).toContain('New Hampshire')
  expect(breeds).not.toContain('Rhode Island Red')
})

test.each([
  ['I/i+ rooster on i+/i+ hen, how many white', /^Half white/u],
  ['P/p+ male x p+/p+ female, how often pea comb', /^Half pea comb, half single comb/u],
  ['h+/h silkie roo over full silkie hens, % silky feather', /^Half silkie-feathered/u],
  ['mo/mo over Mo+/mo, mottled %', /^Half mottled/u],
  ['Ameraucana roo (O/o+, black) x welsummer hens, fraction of blue layers?', /half olive or green/u],
  [
    'barnevelder that carries recessive white C+/c with white rock hen c/c what percent whites',
    /^Half white, most likely/u,
  ],
  ['Ig+/ig S/s+ male x ig/ig s+/- hen. how many cream', /a quarter cream/u],
  ['R/R P/p+ over r+/r+ p+/p+ comb types please', /^Half walnut comb, half rose comb/u],
  ['id+/id+ cock, Id/- hen leg colour by sex', /^Cockerels: all white shanks; pullets: all slate shanks/u],
  ['white silkie cock, barred rock hen. will they be striped', /^Barred: all cockerels, no pullets/u],
  ['lavender orpington cock over black orpington hens, how many lavender', /^None lavender, all carry it unseen/u],
  ['lavender cock over split hens, how many will be split', /^Half split to lavender/u],
  ['naked neck cock x light sussex hens, do all the chicks get the naked neck', /^All naked or bow-tie necked/u],
  ['silkie x pekin F1 among themselves, how much silkie feather comes', /^A quarter silkie-feathered/u],
  ['blue orp roo over blue orp hens how many black', /^A quarter black/u],
  ['scots dumpy on scots dumpy, how many will i lose', /^Both birds short-legged: a quarter/u],
  ['feather sexing RIR x barred rock, does that work', /^By the wing only if/u],
  ['k+/k+ cock x K/- hen, wing sexing?', /^Yes, by the wing/u],
])('%s: what was asked is told first', (text, words) => {
  const answer = answerTo(text)
  expect(answer.kind === 'cross' && answer.summary).toMatch(words)
})

test.each([
  ['rumpless araucana cock on rumpless araucana hens', /^Both birds rumpless/u],
  ['cornish x rock', /^The Cornish Cross meat bird/u],
])('%s: what is told of both birds, or made of them, is cautioned', (text, words) => {
  const answer = answerTo(text)
  expect(answer.kind === 'cross' && answer.cautions.map((caution) => caution.text)).toContainEqual(
    expect.stringMatching(words),
  )
})

test.each([
  [
    'should I get a heritage RIR rooster or a production one for my Delaware hens, eggs?',
    /heritage, .*; production, /u,
  ],
  ['fryer or exhibition New Hampshire cock over barred rock hens, which gives more meat', /fryer, .*; exhibition, /u],
  [
    'show or hatchery Barred Rock hens under my New Hampshire roo, does it matter for eggs',
    /exhibition, .*; hatchery, /u,
  ],
])('%s: the lines are set side by side in the first line', (text, words) => {
  expect(answerTo(text)).toMatchObject({ kind: 'cross', summary: expect.stringMatching(words) })
})

test('a line that nothing is known of is named, with the one that stands for it', () => {
  const answer = answerTo('german New Hampshire cock over Light Sussex hens. eggs of the daughters')
  expect(answer.kind === 'cross' && answer.assumptions.join('; ')).toMatch(/New Hampshire called german.*production/u)
})
