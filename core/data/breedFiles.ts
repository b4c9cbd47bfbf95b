// core/data/breedFiles.ts: which files make up the catalogue. A new file is named here; a new variety is not.
import american from './breeds/american.json' with { type: 'json' }
import asiatic from './breeds/asiatic.json' with { type: 'json' }
import autosexing from './breeds/autosexing.json' with { type: 'json' }
import bantams from './breeds/bantams.json' with { type: 'json' }
import blueEggs from './breeds/blue-eggs.json' with { type: 'json' }
import british from './breeds/british.json' with { type: 'json' }
import continental from './breeds/continental.json' with { type: 'json' }
import crested from './breeds/crested.json' with { type: 'json' }
import darkEggs from './breeds/dark-eggs.json' with { type: 'json' }
import described from './breeds/described.json' with { type: 'json' }
import game from './breeds/game.json' with { type: 'json' }
import hybrids from './breeds/hybrids.json' with { type: 'json' }
import landraces from './breeds/landraces.json' with { type: 'json' }
import leghorns from './breeds/leghorns.json' with { type: 'json' }
import mediterranean from './breeds/mediterranean.json' with { type: 'json' }
import orpingtons from './breeds/orpingtons.json' with { type: 'json' }
import reds from './breeds/reds.json' with { type: 'json' }
import rocks from './breeds/rocks.json' with { type: 'json' }
import silkies from './breeds/silkies.json' with { type: 'json' }
import sussex from './breeds/sussex.json' with { type: 'json' }
import wyandottes from './breeds/wyandottes.json' with { type: 'json' }

/** Rows by path, unread: core/breeds.ts checks them. */
export const breedFiles: Readonly<Record<string, unknown>> = {
  'core/data/breeds/reds.json': reds,
  'core/data/breeds/rocks.json': rocks,
  'core/data/breeds/american.json': american,
  'core/data/breeds/sussex.json': sussex,
  'core/data/breeds/leghorns.json': leghorns,
  'core/data/breeds/orpingtons.json': orpingtons,
  'core/data/breeds/wyandottes.json': wyandottes,
  'core/data/breeds/dark-eggs.json': darkEggs,
  'core/data/breeds/asiatic.json': asiatic,
  'core/data/breeds/mediterranean.json': mediterranean,
  'core/data/breeds/continental.json': continental,
  'core/data/breeds/british.json': british,
  'core/data/breeds/blue-eggs.json': blueEggs,
  'core/data/breeds/autosexing.json': autosexing,
  'core/data/breeds/crested.json': crested,
  'core/data/breeds/silkies.json': silkies,
  'core/data/breeds/bantams.json': bantams,
  'core/data/breeds/game.json': game,
  'core/data/breeds/landraces.json': landraces,
  'core/data/breeds/hybrids.json': hybrids,
  'core/data/breeds/described.json': described,
}
