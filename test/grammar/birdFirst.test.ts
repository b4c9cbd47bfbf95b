// test/grammar/birdFirst.test.ts: what is asked of a breed stands in the first line, or that the catalogue does not know it.
import { expect, test } from 'vitest'
import { answered } from './answered.ts'

const answerTo = (text: string) =>
  answered({ kind: '', text, before: undefined, kinds: [], places: { sire: [], dam: [], birds: [] } })

test.each([
  ['What kinda comb is a Buckeye supposed to have', /^Buckeye combs are pea/u],
  ['are Sumatras pea combed or single', /combs are pea/u],
  ['is a Hamburg rose combed', /combs are rose/u],
  ['are Dominique legs supposed to be yellow', /legs are yellow/u],
  ['what skin colour does a Cornish have', /yellow skin/u],
  ['is the Ayam Cemani skin black too', /dark skin/u],
  ['do Houdans have a crest', /has a crest/u],
  ['do Buckeyes have beards', /no muffs or beard/u],
  ['do Croad Langshans have feathers on their feet?', /feathered feet/u],
  ['does a barnevelder have feathery legs', /clean legs/u],
  ['how many toes should a dorking have and is this dominant?', /five toes/u],
  ['how many toes does a Welsummer have', /four toes/u],
  ['does a dominique carry one barring gene or 2?', /cock has two copies of sex-linked barring, a hen one/u],
  ['Do buff orpington hens got two copies of gold?', /cock has two copies of gold, a hen one/u],
  ['has a light sussex hen one silver gene or two', /cock has two copies of silver, a hen one/u],
  ['is exchequer mo/mo on E or on something else', /ground is usually black/u],
  ['what is the base colour under a Speckled Sussex', /ground is mostly wheaten/u],
  ['do blue andalusians breed true', /^No: .*one copy of blue/u],
  ['do olive eggers breed true', /^No/u],
  ['does a lavender orpington breed true?', /^Yes/u],
  ['is there a lethal gene in Araucanas', /^Yes: .*ear tufts/u],
  ['do Dorkings have a lethal gene', /^No/u],
  ['crested duck breeders talk about a lethal crest, do my Polish chickens have that too', /^No: .*duck/u],
  ['do houdans die from the crest gene', /^No: .*duck/u],
  ['can leghorns fly over a fence', /light breed/u],
])('%s', (text, words) => {
  const answer = answerTo(text)
  expect(answer.kind === 'fact' && answer.summary).toMatch(words)
})

test.each([
  ['where do Barnevelders come from', /Continental.*does not know/u],
  ['what is a wyandotte made from', /American.*does not know/u],
  ['eye colour of Brahma', /does not know the eye colour/u],
  ['what color are the earlobes of a Leghorn', /does not know the ear lobes.*mostly/u],
])('%s: what is not known is said', (text, words) => {
  const answer = answerTo(text)
  expect(answer.kind === 'fact' && answer.summary).toMatch(words)
})

test.each([
  ['Tractor store lady swears you can tell Silver laced wyandotte chicks by color day one, thats not a thing is it??'],
  ['my uncle says Buff Orpington chicks can be sexed at hatch by colour. true?'],
  ['someone told me speckled sussex chicks are autosexing'],
  ['Vorwerk chicks, day old. any way of sexing em at all bar the vent'],
])('%s: the breed mated to itself', (text) => {
  const answer = answerTo(text)
  expect(answer.kind === 'cross' && answer.summary).toMatch(/^Not sexable at hatch/u)
})

test.each([
  ['Brown eggs are more nutritious than white ones, true or nah', 'shell colour and what is inside'],
  ['do blue eggs have more protein', 'shell colour and what is inside'],
  [
    'i heard crossing two heritage breeds always gives weak chicks, like mutts are worse. That right?',
    'are crossbred chicks weaker',
  ],
  ['are mutt chickens less healthy than purebreds', 'are crossbred chicks weaker'],
  ['barnyard mixes are weaker, my neighbour says', 'are crossbred chicks weaker'],
  ['Is it right you can tell a blue egg layer by her green legs', 'egg colour by leg colour'],
  ['do slate legs mean blue eggs', 'egg colour by leg colour'],
])('%s: the belief is answered, not the bird named in it', (text, about) => {
  expect(answerTo(text)).toMatchObject({ kind: 'fact', about, verdict: 'false' })
})

test.each([
  ['[photo] feed store bin said ameraucana lol. what is she really', /^I see no pictures.*Easter Egger/u],
  ['[photo] sold as ameraucana from tractor supply, is she an easter egger', /^I see no pictures.*Easter Egger/u],
  ['[photo] bin said black australorp, is that right', /single comb.*brown eggs/u],
  ['[photo] the ad said olive egger. what is she', /no breed/u],
  ['Roo or pullet?? 6 wks Barred Rock pic in comments', /^I see no pictures.*cockerels mostly look paler/u],
  ['pic of my 9 week old Cuckoo Marans, roo?', /cockerels mostly look paler/u],
  ['pic attached - 6wk old, is this comb too red for a girl? its an araucana x', /^I see no pictures.*clearly red/u],
  ['[photo] 8 week buff orpington, boy or girl?', /single|tall and clearly red/u],
  ['[photo] 5 week old silkie, roo or hen', /late, mostly not before/u],
])('%s: no picture is seen, and what to look for is said', (text, words) => {
  const answer = answerTo(text)
  expect(answer.kind === 'fact' && answer.summary).toMatch(words)
  expect(answer.kind === 'fact' && answer.says.join(' ')).toContain('I see no pictures.')
})

test.each([
  [
    'see pic. mom is my splash marans, dad was either the BCM or the wheaten ameraucana, which one',
    /uffs or a pea comb would speak for Wheaten Ameraucana/u,
  ],
  ['[photo] mum is a RIR hen, dad either the barred rock or the brahma. who is the dad', /Bars .*feathered legs/u],
  ['pic attached, dad is either silkie or leghorn, mum is a sussex, which?', /five toes would speak for White Silkie/u],
])('%s: the signs that tell the father', (text, words) => {
  const answer = answerTo(text)
  expect(answer.kind === 'parents' && answer.summary).toMatch(words)
})

test.each([
  ['kid wants to breed her japanese bantams for the fair, both have the teeny short legs. whats the risk'],
  ['both my dumpies have short legs, what do I lose'],
  ['both my araucanas have tufts, any danger'],
  ['my two frizzled Cochins are both frizzle, any danger in breeding them'],
])('%s: the harm comes first, and both birds are told', (text) => {
  const answer = answerTo(text)
  expect(answer.kind === 'fact' && answer.summary).toMatch(/^No, better not: .*a quarter/u)
  expect(answer.kind === 'fact' && [answer.sire.length, answer.dam.length]).toEqual([1, 1])
})

test.each([
  ["Old chap told me you'll never get a black chick from a white cock"],
  ['can a white rooster throw black chicks?'],
])('%s: it hangs on which white he is', (text) => {
  expect(answerTo(text)).toMatchObject({ about: 'coloured chicks from a white bird', verdict: 'partly' })
})
