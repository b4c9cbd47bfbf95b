// core/looks/rules/silver.ts: silver and gold, on the Z: what they do to down and feather, and where they can be read.
import { literature as by } from '../../data/literature.ts'
import { copies, has, pure } from '../carries.ts'
import type { Draft, Patch, Rule } from '../rule.ts'

const hasRed = ({ red }: Draft): boolean => red !== 'none'
const shows = ({ tone }: Draft): boolean => tone !== 'hidden'
const isSilver = ({ red }: Draft): boolean => red === 'silver' || red === 'brassy silver'

/** Down of the same bird with silver in place of gold. */
function silvered({ down, downPattern }: Draft): Draft['down'] {
  if (down === 'buff' || down === 'red-buff') return 'pale yellow'
  if (down === 'golden brown') return downPattern === 'smudged' ? 'cream' : 'silver grey'
  if (down === 'brown') return downPattern === 'striped' ? 'silver grey' : 'grey-brown'
  return down
}
const isPale = (down: Draft['down']): boolean => down === 'pale yellow' || down === 'cream'

/** On pale silver down no head spot is seen. */
function silverDown(draft: Draft): Patch {
  if (!shows(draft)) return {}
  const down = silvered(draft)
  return { tone: 'silver', down, ...(isPale(down) ? { headSpotClear: 'no' } : {}) }
}

export const silver: readonly Rule[] = [
  {
    id: 'silver',
    loci: ['S'],
    says: 'Silver turns gold and red to white, in the down too where it is not black: pale instead of buff, grey instead of brown.',
    when: (bird, draft) => hasRed(draft) && has(bird, 'S') && !has(bird, 's+'),
    look: (_bird, draft) => ({ red: 'silver', ...silverDown(draft) }),
    certainty: 'sure',
    source: by.gunnarsson2007,
  },
  {
    id: 'silver over gold',
    loci: ['S'],
    says: 'A cock with one copy each of silver and gold hatches silver and grows up silver with a yellow or brassy cast, often red at the shoulder.',
    when: (bird, draft) => hasRed(draft) && has(bird, 'S') && has(bird, 's+'),
    look: (_bird, draft) => ({
      red: 'brassy silver',
      redShoulder: draft.pattern === 'black-breasted',
      ...silverDown(draft),
    }),
    certainty: 'usual',
    hedge: 'how brassy he grows varies',
    source: by.smyth1990,
  },
  {
    id: 'mahogany through silver',
    loci: ['E', 'S', 'Mh', 'Co'],
    says: 'On plain wheaten, mahogany shows through silver: salmon on the hen’s back, red on the cock’s shoulder.',
    when: (bird, draft) =>
      isSilver(draft) && draft.base.startsWith('e^Wh') && draft.restrained === 'no' && has(bird, 'Mh'),
    look: (bird) => (bird.sex === 'F' ? { red: 'salmon' } : { redShoulder: true }),
    certainty: 'usual',
    source: by.breeders,
  },
  {
    id: 'black-tailed red',
    loci: ['Co', 'Mh', 'S'],
    says: 'Columbian with two copies of mahogany on gold makes a deep red bird, black in the tail and little else.',
    when: (bird, { pattern }) => pattern === 'columbian' && pure(bird, 'Mh') && !has(bird, 'S'),
    look: { pattern: 'black-tailed' },
    certainty: 'usual',
    source: by.smyth1990,
  },
  {
    id: 'dark brown beside columbian',
    loci: ['Co', 'Db', 'S'],
    says: 'Dark brown beside columbian takes more black out of the hackle of a gold bird.',
    when: (bird, { pattern }) => pattern === 'columbian' && copies(bird, 'Db') > 0 && !has(bird, 'S'),
    look: { pattern: 'black-tailed' },
    certainty: 'doubtful',
    source: by.smyth1990,
  },
]
