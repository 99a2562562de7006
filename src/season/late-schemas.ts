/** Most seasons have no profile and no formation book; their schemas take a while to build. */
export const loadProfileSchema = async () => (await import('../ingest/profile.ts')).profileSchema;

/** The schema of a formation book. */
export const loadFormationSchema = async () =>
  (await import('../ingest/formation/formation-schema.ts')).formationBookSchema;
