// grammar/words/givenNames.ts: English words that keepers give to birds as names. Data only.

export const givenNames: ReadonlySet<string> = new Set(
  `daisy rose rosie ruby poppy ivy lily pearl hazel violet holly amber penny honey ginger pepper peaches pickle pickles buttercup
  clover heather iris jasmine marigold olive petal primrose rusty buddy sunny dusty lucky rocky king prince duke earl captain
  may june april dolly goldie snowy jack bill frank rob mark pat sandy robin jay martin nick grace faith hope joy dawn
  sugar biscuit cookie muffin nugget noodle pebbles spike scout hunter archer mason carter
  dot dottie ash blaze olly buster bandit domino pip speckles freckles patch pebble bramble willow fern`
    .split(/\s+/u)
    .filter(Boolean),
)
