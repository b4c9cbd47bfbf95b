// test/bench/hen.bench.ts: time of one expected hen, one hatch plan and one comparison of lines. Run: npm run bench. Not a test: no limits here.
import { bench, do_not_optimize, run, summary } from 'mitata'
import { answerHatch } from '../../core/answers/hatch.ts'
import { answerLines } from '../../core/answers/lines.ts'
import { expectHen } from '../../core/hen/expect.ts'
import type { HatchQuestion, LinesQuestion } from '../../core/question.ts'

const [red, sussex] = [{ breed: 'Rhode Island Red' }, { breed: 'Light Sussex' }]
const f1 = { cross: { sire: red, dam: sussex } }
const common = { assumed: [], manner: { symbols: false, units: 'metric' } } as const
const hatch: HatchQuestion = { kind: 'hatch', topic: 'eggs-to-set', pulletsWanted: 12, ...common }
const lines: LinesQuestion = { kind: 'lines', topic: 'compare', goals: ['eggs'], compare: [], prices: {}, ...common }

summary(() => {
  bench('daughters of two lines', () => do_not_optimize(expectHen({ sire: red, dam: sussex }, []))).baseline()
  bench('their second generation', () => do_not_optimize(expectHen({ sire: f1, dam: f1 }, [])))
})
summary(() => {
  bench('eggs to set for twelve pullets, steady and over varying hatches', () => do_not_optimize(answerHatch(hatch)))
  bench('best lines of the catalogue, after the first time', () => do_not_optimize(answerLines(lines)))
})
await run()
