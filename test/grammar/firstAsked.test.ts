// test/grammar/firstAsked.test.ts: the first line answers what was asked of a mating, a gene or a belief, and not something beside it.
import { expect, test } from 'vitest'
import { answered } from './answered.ts'

const summaryOf = (text: string): string => {
  const answer = answered({ kind: '', text, before: undefined, kinds: [], places: { sire: [], dam: [], birds: [] } })
  return 'summary' in answer ? answer.summary : ''
}

test.each([
  ['how soon can i tell boys, welsummer roo welsummer hens', /^Partly, at hatch by marks.*stripe/u],
  ['can silver grey dorkings be sexed as day olds by their stripes', /^Partly/u],
  ['cream legbar x cream legbar sexable?', /^Yes, at hatch by stripes/u],
  ['vorwerk cock on vorwerk hens, sexable at hatch?', /^Not sexable/u],
  ['what makes a marans egg so dark', /coat of brown pigment/u],
  ['whats Ml do', /^Melanotic, Ml, spreads black/u],
  ['what does Di do', /thins red to buff/u],
  ['what is Co', /drives the black out/u],
  ['Mrs next door says a hen remembers her first cock', /^No: a hen hands on nothing of an earlier mate/u],
  ['heard older hens give more girls', /^No: it is luck/u],
  ['mutts lay better than pures, fact or fiction', /^Partly: a first cross/u],
  ['a white hen cant have coloured chicks. bs?', /^Partly: only a bird with two copies of dominant white/u],
  ['are dominiques and barred rocks the same bar gene', /^Yes: the bars/u],
  ['is my buff orp hiding blue', /^Yes, it may: blue shows on black feathers alone/u],
  ['is my black orp hiding blue', /^No: .*a black bird has none/u],
  ['does a speckled sussex hide anything recessive', /shows mottling, recessive/u],
  ['isabel leghorn, what makes it that colour', /with lavender/u],
  ['big brahma boy on leghorn girls ok size wise?', /can tear her back/u],
  ['silkie rooster on orpington hens too small?', /fewer eggs may be fertile/u],
  ['RIR cock on leghorn hens too heavy for them?', /^No harm/u],
  ['will the cockerels be too small to eat, leghorn x RIR', /^Daughters: about \d/u],
  ['two frizzles together how bad', /over-frizzled/u],
  ['crested silkies with the vaulted skull, does breeding crest to crest make it worse', /open under the crest/u],
  ['Dark cornish over white rocks.. babies white or no', /^None white/u],
  ['BCM male carrying rec white (C/c) x white rocks', /^Half white/u],
  [
    'Silver Spangled Hamburg hens with a Derbyshire Redcap lad all winter, do the chicks come any particular way',
    /^Yes/u,
  ],
  ['which breeds made the Buckeye', /what it was made from the catalogue does not know/u],
  ['is a Sultan crested', /has a crest/u],
  ['what does a Serama weigh', /^Serama: cocks roughly/u],
])('%s', (text, first) => {
  expect(summaryOf(text)).toMatch(first)
})
