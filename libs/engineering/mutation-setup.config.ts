import fc from 'fast-check';

// Few random samples, and the same ones for every mutant.
fc.configureGlobal({ numRuns: 20, seed: 20_260_101 });
