// odex ships TypeScript sources without declarations; imported from here, with its own declarations, they stay out of our program.
export { Outcome, Solver } from 'odex';
