// test/bench/looks.bench.ts: time of one look and of one genotype read. Run: npm run bench. Not a test: no limits here.
import { bench, do_not_optimize, run, summary } from 'mitata'
import { formatGenotype, readGenotype } from '../../core/genotype.ts'
import { express } from '../../core/looks/express.ts'

const told = 'S/s+ K/k+ B/b+ Id/id+ e^Wh/e^b Co/Co Ml/ml+ Pg/pg+ Mh/mh+ W+/w R/r+ P/p+'
const read = readGenotype(told)
const genotype = read.ok ? read.value : {}

summary(() => {
  bench('look of a chick, 12 loci listed', () => do_not_optimize(express('M', genotype))).baseline()
  bench('look of a white chick', () => do_not_optimize(express('M', { ...genotype, c: ['c', 'c'] })))
  bench('look of a wild-type chick', () => do_not_optimize(express('F', {})))
})
summary(() => {
  bench('read a genotype of 12 loci', () => do_not_optimize(readGenotype(told)))
  bench('print it', () => do_not_optimize(formatGenotype(genotype)))
})
await run()
