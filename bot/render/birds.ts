// bot/render/birds.ts: a bird's name as a keeper would say it.
import type { BirdSeen } from '../../core/answer.ts'

const lineWords: Readonly<Record<string, string>> = {
  'fine-barred': 'fine-barred exhibition',
  'open-barred': 'open-barred production',
}
const lineName = (line: string): string => lineWords[line] ?? line.replaceAll('-', ' ')

const within = (bird: BirdSeen): string => {
  if (!bird.cross) return bird.name ?? breedName(bird)
  return `(${within(bird.cross.sire)} x ${within(bird.cross.dam)})`
}

/** Breed with its line in front: 'production Rhode Island Red'; no line where the keeper told none. */
function breedName(bird: BirdSeen): string {
  if (!bird.breed) return bird.genotype ?? 'bird of unknown breed'
  return bird.line && bird.line !== 'standard' ? `${lineName(bird.line)} ${bird.breed}` : bird.breed
}

/** 'Rhode Island Red', 'Rhode Island Red x Light Sussex cross', 'Bert'. */
export function birdName(bird: BirdSeen): string {
  if (bird.name) return bird.name
  if (bird.cross) {
    const parents = `${within(bird.cross.sire)} x ${within(bird.cross.dam)}`
    return bird.breed ? `${bird.breed} (${parents})` : `${parents} cross`
  }
  return breedName(bird)
}

/** 'Rhode Island Red over Light Sussex'; two of a kind are named once. */
export function matingName(sire: BirdSeen, dam: BirdSeen): string {
  const [cock, hen] = [birdName(sire), birdName(dam)]
  return cock === hen ? `${cock}, mated among themselves` : `${cock} over ${hen}`
}
