export { waterDensityOf } from './sea-water.ts';
