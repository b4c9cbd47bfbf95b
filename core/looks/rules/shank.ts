// core/looks/rules/shank.ts: skin and shanks, read at 8 to 12 weeks; dark skin within days of hatch.
import { literature as by } from '../../data/literature.ts'
import { copies, has, pure, type Bird } from '../carries.ts'
import type { Draft, Rule } from '../rule.ts'

const clear = (bird: Bird): boolean => has(bird, 'Id')
const black = ({ base, white, black }: Draft): boolean =>
  !white && (base === 'E' || base === 'E/E^R' || base === 'E/e') && (black === 'black' || black === 'chocolate')

export const shankAndSkin: readonly Rule[] = [
  {
    id: 'yellow skin',
    loci: ['W'],
    says: 'Two copies of yellow skin make skin, shanks and beak yellow, on feed with green in it; it fades as a hen lays.',
    when: (bird) => pure(bird, 'w'),
    look: { skin: 'yellow' },
    certainty: 'sure',
    source: by.eriksson2008,
  },
  {
    id: 'sex-linked white skin',
    loci: ['y'],
    says: 'Sex-linked white skin takes the yellow out again.',
    when: (bird) => pure(bird, 'y'),
    look: { skin: 'white' },
    certainty: 'usual',
    source: by.mcgibbon1981,
  },
  {
    id: 'clear shanks',
    loci: ['Id', 'W', 'y'],
    says: 'The inhibitor of dermal black leaves shanks clear: white or yellow, as the skin.',
    when: clear,
    look: (_bird, { skin }) => ({ shank: skin === 'yellow' ? 'yellow' : 'white' }),
    certainty: 'sure',
    source: by.omiaId,
  },
  {
    id: 'one inhibitor',
    loci: ['Id'],
    says: 'A cock with one copy of the inhibitor may keep a light dark wash on the shanks.',
    when: (bird) => copies(bird, 'Id') === 1 && has(bird, 'id+'),
    look: {},
    certainty: 'usual',
    source: by.omiaId,
  },
  {
    id: 'dark shanks',
    loci: ['Id', 'W', 'y'],
    says: 'Without that inhibitor shanks grow dark: slate on white skin, willow on yellow.',
    when: (bird) => !clear(bird),
    look: (_bird, { skin }) => ({ shank: skin === 'yellow' ? 'willow' : 'slate' }),
    certainty: 'sure',
    source: by.omiaId,
  },
  {
    id: 'barring lightens shanks',
    loci: ['Id', 'B', 'W', 'y'],
    says: 'Barring lightens dark shanks, two copies most.',
    when: (bird) => !clear(bird) && !has(bird, 'b+'),
    look: (bird, { skin, shank }) => ({
      shank: copies(bird, 'B') === 2 ? (skin === 'yellow' ? 'yellow' : 'white') : `pale ${shank}`,
    }),
    certainty: 'usual',
    source: by.smyth1990,
  },
  {
    id: 'black over dark shanks',
    loci: ['E', 'Id', 'B'],
    says: 'Black plumage lays more black over dark shanks.',
    when: (bird, draft) => black(draft) && !clear(bird) && has(bird, 'b+'),
    look: (_bird, { shank }) => ({ shank: `dark ${shank}` }),
    certainty: 'usual',
    source: by.smyth1990,
  },
  {
    id: 'black over clear shanks',
    loci: ['E', 'Id', 'B', 'mo'],
    says: 'Black plumage leaves a dusky wash on clear shanks, mostly in pullets.',
    when: (bird, draft) => black(draft) && clear(bird) && bird.sex === 'F' && has(bird, 'b+') && !draft.mottled,
    look: (_bird, { shank }) => ({ shank: `dusky ${shank}` }),
    certainty: 'usual',
    source: by.smyth1990,
  },
  {
    id: 'mottled shanks',
    loci: ['E', 'mo', 'Id'],
    says: 'Mottled black birds have mottled shanks.',
    when: (_bird, draft) => draft.mottled && draft.base.startsWith('E'),
    look: (_bird, { shank }) => ({ shank: `${shank}, mottled` }),
    certainty: 'usual',
    source: by.breeders,
  },
  {
    id: 'dark skin',
    loci: ['Fm', 'Id'],
    says: 'Dark skin needs a bird without the inhibitor of dermal black: then skin, comb and bones are black, and the face shows it within days of hatch.',
    when: (bird) => has(bird, 'Fm') && !clear(bird),
    look: { skin: 'dark', shank: 'dark', chickSkin: 'dark' },
    certainty: 'sure',
    source: by.punnett1911,
  },
  {
    id: 'dark skin held back',
    loci: ['Fm', 'Id'],
    says: 'The inhibitor of dermal black holds dark skin back to traces.',
    when: (bird) => has(bird, 'Fm') && clear(bird),
    look: { chickSkin: 'tinged' },
    certainty: 'sure',
    source: by.punnett1911,
  },
]
