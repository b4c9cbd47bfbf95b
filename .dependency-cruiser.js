// .dependency-cruiser.js: the direction of imports: bot -> grammar -> core, and core stays pure.
const only = (name, from, to) => ({ name, severity: 'error', from, to })

export default {
  forbidden: [
    only('core-imports-nothing-above', { path: '^core/' }, { path: '^(bot|grammar|test)/' }),
    only('core-is-pure', { path: '^core/' }, { dependencyTypes: ['core'] }),
    only('grammar-is-pure', { path: '^grammar/' }, { dependencyTypes: ['core'] }),
    only('the-engine-knows-no-biology', { path: '^core/engine/(num|factor|doubles|fractions|loops|order|tree|plan|recipe|eliminate|distribute|gather|united|memo|blocks)\\.ts$' }, { path: '^core/(?!engine/(num|factor|doubles|fractions|loops|order|tree|plan|recipe|eliminate|distribute|gather|united|memo|blocks)\\.ts$)' }),
    only('grammar-imports-only-core-vocabulary', { path: '^grammar/' }, {
      path: '^(bot|test|core)/',
      pathNot: '^core/(vocabulary|question|breeds|genotype|topics)\\.ts$|^core/data/',
    }),
    only('bot-enters-by-the-doors', { path: '^bot/' }, {
      path: '^(core|grammar)/',
      pathNot: '^core/(vocabulary|question|answer|resolve|statement|catalogue)\\.ts$|^core/looks/look\\.ts$|^grammar/(understand|context)\\.ts$',
    }),
    only('networks-only-in-transports', { path: '^(bot|core|grammar)/', pathNot: '^bot/transports/' }, { path: 'node_modules/matrix-js-sdk' }),
    only('no-cycles', {}, { circular: true }),
  ],
  options: {
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    doNotFollow: { path: 'node_modules' },
    enhancedResolveOptions: { extensions: ['.ts', '.js', '.json'] },
  },
}
