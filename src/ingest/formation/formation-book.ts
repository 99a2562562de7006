export { type FormationStructure, formationReader } from './formation-reader.ts';
export { type FormationBook, formationBookSchema } from './formation-schema.ts';
