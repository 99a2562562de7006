export { formationReader } from './formation-reader.ts';
export { formationBookSchema } from './formation-schema.ts';
