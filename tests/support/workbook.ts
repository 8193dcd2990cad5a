import { strToU8, zipSync } from 'fflate';

/** A workbook (.xlsx) with one sheet, as small as ISO/IEC 29500 lets one be: texts stand inline, numbers as numbers. */
export function workbook(rows: readonly (readonly (string | number)[])[]): Buffer {
  const cell = (value: string | number) =>
    typeof value === 'number' ? `<c><v>${value}</v></c>` : `<c t="inlineStr"><is><t>${value}</t></is></c>`;
  const sheet = rows.map(
    (row, index) =>
      `<row r="${index + 1}">${row.map((value, at) => cell(value).replace('<c', `<c r="${'ABCDEFGH'[at]}${index + 1}"`)).join('')}</row>`,
  );
  const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
  const RELATIONS = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
  const PACKAGE = 'http://schemas.openxmlformats.org/package/2006';
  const TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml';
  const parts = {
    '[Content_Types].xml': `<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Override PartName="/xl/workbook.xml" ContentType="${TYPE}.sheet.main+xml"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="${TYPE}.worksheet+xml"/></Types>`,
    '_rels/.rels': `<Relationships xmlns="${PACKAGE}/relationships"><Relationship Id="r1" Type="${RELATIONS}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    'xl/workbook.xml': `<workbook xmlns="${MAIN}" xmlns:r="${RELATIONS}"><sheets><sheet name="Pulls" sheetId="1" r:id="r1"/></sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': `<Relationships xmlns="${PACKAGE}/relationships"><Relationship Id="r1" Type="${RELATIONS}/worksheet" Target="worksheets/sheet1.xml"/></Relationships>`,
    'xl/worksheets/sheet1.xml': `<worksheet xmlns="${MAIN}"><sheetData>${sheet.join('')}</sheetData></worksheet>`,
  };
  return Buffer.from(
    zipSync(
      Object.fromEntries(Object.entries(parts).map(([path, text]) => [path, strToU8(`<?xml version="1.0" encoding="UTF-8"?>${text}`)])),
    ),
  );
}
