// core/looks/rules/barring.ts: sex-linked barring: bars on the grown bird, head spot and blurred stripes on the chick, by dose.
import { literature as by } from '../../data/literature.ts'
import { copies, type Bird } from '../carries.ts'
import type { Draft, Rule } from '../rule.ts'

const doses = (bird: Bird): number => copies(bird, 'B') + copies(bird, 'B^Sd') + copies(bird, 'B^0')
const diluting = (bird: Bird): number => copies(bird, 'B^Sd') + copies(bird, 'B^0')
/** Down that a pattern marks: marbled as in the Campine, smudged as in laced birds. Columbian smudges are pale. */
const marked = ({ down, downPattern }: Draft): boolean =>
  downPattern === 'marbled' ||
  downPattern === 'blurred stripes' ||
  (downPattern === 'smudged' && ['brown', 'grey-brown', 'dark brown'].includes(down))
const darkDown = (draft: Draft): boolean => draft.base.startsWith('E') && !marked(draft)
const paleDown = (draft: Draft): boolean => !marked(draft) && (draft.base === 'e^Wh' || draft.restrained === 'fully')
const striped = (draft: Draft): boolean => !darkDown(draft) && !paleDown(draft)

const paled: Partial<Record<Draft['down'], Draft['down']>> = { 'red-buff': 'buff', buff: 'cream' }

export const barring: readonly Rule[] = [
  {
    id: 'barred, two doses',
    loci: ['B'],
    says: 'Two copies of barring, which only a cock can have, make wide white bars and a light bird; slow feathering makes the bars sharper.',
    when: (bird, { white }) => !white && doses(bird) === 2,
    look: { barring: 'double dose' },
    certainty: 'sure',
    source: by.hellstrom2010,
  },
  {
    id: 'barred, one dose',
    loci: ['B'],
    says: 'One copy of barring makes narrower white bars on black and on red; slow feathering makes them sharper.',
    when: (bird, { white }) => !white && doses(bird) === 1,
    look: { barring: 'single dose' },
    certainty: 'sure',
    source: by.hellstrom2010,
  },
  {
    id: 'sex-linked dilution',
    loci: ['B'],
    says: 'The dilution alleles of barring make paler bars; two copies leave a nearly white bird.',
    when: (bird, { white }) => !white && diluting(bird) > 0,
    look: { paleBars: true },
    certainty: 'sure',
    source: by.omiaB,
  },
  {
    id: 'head spot, two doses',
    loci: ['E', 'Db', 'Ml', 'Pg', 'Co', 'B', 'I'],
    says: 'On black or dark down two copies of barring leave a large, irregular pale spot on the head.',
    when: (bird, draft) => darkDown(draft) && draft.headSpot !== 'hidden' && doses(bird) === 2,
    look: { headSpot: 'large' },
    certainty: 'usual',
    hedge: 'the size of the spot varies',
    source: by.kentucky,
  },
  {
    id: 'head spot, one dose',
    loci: ['E', 'Db', 'Ml', 'Pg', 'Co', 'B', 'I'],
    says: 'On black or dark down one copy of barring leaves a small, compact pale spot on the head.',
    when: (bird, draft) => darkDown(draft) && draft.headSpot !== 'hidden' && doses(bird) === 1,
    look: { headSpot: 'small' },
    certainty: 'sure',
    hedge: 'small spots are easily missed, and some unbarred black chicks have white on the head',
    source: by.kentucky,
  },
  {
    id: 'blurred stripes',
    loci: ['E', 'Co', 'Db', 'Ml', 'Pg', 'B', 'I'],
    says: 'On striped or marked down two copies of barring wash the marks out from head to rump: the cockerel of the autosexing breeds.',
    when: (bird, draft) => striped(draft) && draft.headSpot !== 'hidden' && doses(bird) === 2,
    look: { downPattern: 'blurred stripes', headSpot: 'blurred' },
    certainty: 'sure',
    source: by.legbarStandard,
  },
  {
    id: 'crisp stripes',
    loci: ['E', 'Co', 'Db', 'Ml', 'Pg', 'B', 'I'],
    says: 'On striped or marked down one copy of barring keeps the marks dark and crisp, with at most a small light spot on the head.',
    when: (bird, draft) => striped(draft) && draft.headSpot !== 'hidden' && doses(bird) === 1,
    look: { headSpot: 'small' },
    certainty: 'sure',
    source: by.legbarStandard,
  },
  {
    id: 'pale down of two doses',
    loci: ['E', 'Co', 'Db', 'S', 'B', 'I'],
    says: 'On buff or red down two copies of barring pale the whole chick: the cockerel of the autosexing breeds that are buff or red.',
    when: (bird, { down }) => doses(bird) === 2 && down in paled,
    look: (_bird, { down }) => ({ down: paled[down]! }),
    certainty: 'doubtful',
    hedge: 'the books differ on how surely buff and red down tells the sex: strains differ',
    source: by.breeders,
  },
  {
    id: 'head spot on pale down',
    loci: ['E', 'Co', 'Db', 'Ml', 'Pg', 'S', 'B'],
    says: 'On buff or red down the pale spot of barring is weak; on pale silver down it is not seen.',
    when: (bird, draft) => !darkDown(draft) && paleDown(draft) && doses(bird) > 0,
    look: (bird, { headSpotClear }) => ({
      headSpot: headSpotClear === 'no' ? 'hidden' : doses(bird) === 2 ? 'large' : 'small',
    }),
    certainty: 'doubtful',
    hedge: 'a head spot on pale down is not to be relied on',
    source: by.smyth1990,
  },
]
