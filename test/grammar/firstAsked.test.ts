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
  ['what colour is a vorwerk hen', /golden buff body with solid black head/u],
  ['is lavender sex linked', /^Not sex-linked/u],
  ['is barring autosomal', /^Sex-linked: barring sits on the Z/u],
  ['does naked neck kill the chicks if doubled', /^No: .*naked neck kill no chick/u],
  ['is frizzle lethal in Cochins', /^No: frizzle kills no chick/u],
  ['are ear tufts lethal', /^Yes: two copies of ear tufts kill/u],
  ['what does split mean', /^A bird split to a colour has one unseen copy/u],
  ['when will buff orp chicks show roo or hen', /about six weeks/u],
  ['which has to be the silver one', /^The hen/u],
  ['can cold eggs make more roosters', /^No: temperature/u],
  ['can you sex eggs by candling', /^No: neither shape/u],
  ['black hens lay black eggs right', /^No: feather colour/u],
  ['scots dumpy x scots dumpy chicks', /^Both birds short-legged/u],
  ['rumpless araucana pair any problem', /^Both birds rumpless/u],
  ['ee roo O/o and p/p straight comb on my leghorns. blue?', /^Daughters: half blue/u],
  ['black orp roo out of a lavender hen over lavender orp hens', /^Half black, half lavender/u],
])('%s', (text, first) => {
  expect(summaryOf(text)).toMatch(first)
})
