import { crc32 } from 'node:zlib';

/** A cell of an invented workbook: a text, a number, or a number shown as a date or a time of day. */
export type WorkbookCell = string | number | { readonly date: number } | null;

/** An .xlsx workbook with these sheets, stored without compression (ECMA-376 parts 1 and 2, as far as needed). */
export function makeWorkbook(sheets: readonly (readonly (readonly WorkbookCell[])[])[]): Uint8Array {
  const names = sheets.map((_, i) => `sheet${i + 1}`);
  const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
  const relations = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
  const packages = 'http://schemas.openxmlformats.org/package/2006';
  const files: [string, string][] = [
    [
      '[Content_Types].xml',
      `<Types xmlns="${packages}/content-types"><Default Extension="xml" ContentType="application/xml"/></Types>`,
    ],
    [
      '_rels/.rels',
      `<Relationships xmlns="${packages}/relationships"><Relationship Id="rId1" Type="${relations}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    ],
    [
      'xl/workbook.xml',
      `<workbook xmlns="${main}" xmlns:r="${relations}"><sheets>${names.map((name, i) => `<sheet name="${name}" sheetId="${i + 1}" r:id="rId${i + 1}"/>`).join('')}</sheets></workbook>`,
    ],
    [
      'xl/_rels/workbook.xml.rels',
      `<Relationships xmlns="${packages}/relationships">${names.map((name, i) => `<Relationship Id="rId${i + 1}" Type="${relations}/worksheet" Target="worksheets/${name}.xml"/>`).join('')}<Relationship Id="rIdS" Type="${relations}/styles" Target="styles.xml"/></Relationships>`,
    ],
    [
      'xl/styles.xml',
      `<styleSheet xmlns="${main}"><cellXfs count="2"><xf numFmtId="0"/><xf numFmtId="14" applyNumberFormat="1"/></cellXfs></styleSheet>`,
    ],
    ...sheets.map((rows, i): [string, string] => [`xl/worksheets/${names[i]}.xml`, sheetXml(rows, main)]),
  ];
  return zip(files.map(([name, text]) => ({ name, bytes: Buffer.from(text) })));
}

function sheetXml(rows: readonly (readonly WorkbookCell[])[], main: string): string {
  const lines = rows.map((row, r) => {
    const cells = row.map((cell, c) => cellXml(cell, `${String.fromCharCode(65 + c)}${r + 1}`));
    return `<row r="${r + 1}">${cells.join('')}</row>`;
  });
  return `<worksheet xmlns="${main}"><sheetData>${lines.join('')}</sheetData></worksheet>`;
}

function cellXml(cell: WorkbookCell, place: string): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return `<c r="${place}"><v>${cell}</v></c>`;
  if (typeof cell === 'object') return `<c r="${place}" s="1"><v>${cell.date}</v></c>`;
  const text = cell.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
  return `<c r="${place}" t="inlineStr"><is><t>${text}</t></is></c>`;
}

/** A zip archive with stored entries (APPNOTE.TXT 6.3.10, sections 4.3.7, 4.3.12 and 4.3.16). */
function zip(entries: readonly { readonly name: string; readonly bytes: Buffer }[]): Uint8Array {
  const locals: Buffer[] = [];
  const directory: Buffer[] = [];
  let offset = 0;
  for (const { name, bytes } of entries) {
    const common = Buffer.alloc(26);
    common.writeUInt16LE(20, 0);
    common.writeUInt32LE(crc32(bytes), 10);
    common.writeUInt32LE(bytes.length, 14);
    common.writeUInt32LE(bytes.length, 18);
    common.writeUInt16LE(name.length, 22);
    const local = Buffer.concat([Buffer.from('PK\x03\x04'), common, Buffer.from(name), bytes]);
    const tail = Buffer.alloc(14);
    tail.writeUInt32LE(offset, 10);
    directory.push(Buffer.concat([Buffer.from('PK\x01\x02\x14\x00'), common, tail, Buffer.from(name)]));
    locals.push(local);
    offset += local.length;
  }
  const end = Buffer.alloc(22);
  end.write('PK\x05\x06', 0, 'latin1');
  end.writeUInt16LE(entries.length, 8);
  end.writeUInt16LE(entries.length, 10);
  end.writeUInt32LE(Buffer.concat(directory).length, 12);
  end.writeUInt32LE(offset, 16);
  return Uint8Array.from(Buffer.concat([...locals, ...directory, end]));
}
