import { readWorkbook, type WorkbookReading } from '../ingest/read-workbook.ts';
import { oversizeOf } from './workbook-size.ts';

/** A workbook's fullest sheet as text; one that would fill the memory is refused before it is unpacked. */
export async function workbookText(bytes: Uint8Array): Promise<WorkbookReading> {
  const reason = oversizeOf(bytes);
  return reason === null ? readWorkbook(bytes) : { kind: 'refused', reason };
}
