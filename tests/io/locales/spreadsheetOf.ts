import { strToU8, zipSync } from "fflate";
import { blockCells } from "../../../src/core/read/block/blockCells.ts";
import type { BlockCell } from "../../../src/core/read/block/blockTable.ts";
import { sheetOf } from "../../../src/core/sheets/sheetOf.ts";
import { dayNumber } from "../../../src/core/values/date.ts";
import type { TextTable } from "../../../src/core/workbook.ts";

const DAY_0 = 25_569;
/** Styles by their place: general, the country's short date, its date and time, its time, its thousands, a share in percent. */
const FORMATS = [0, 14, 22, 21, 3, 10];
const [GENERAL, DATE, MOMENT, TIME, THOUSANDS] = [0, 1, 2, 3, 4];

/** A sheet as a clerk's spreadsheet holds it: numbers as numbers, days as days, in the formats that follow the country. */
export function spreadsheetOf(sheets: Readonly<Record<string, TextTable>>): Uint8Array {
	const files = Object.keys(sheets);
	const relation = (type: string, target: string, id: string) =>
		`<Relationship Id="${id}" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/${type}" Target="${target}"/>`;
	const relations = (...all: string[]) =>
		`<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${all.join("")}</Relationships>`;
	const MAIN = 'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"';
	const TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml";
	const parts: Record<string, string> = {
		"[Content_Types].xml": `<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Override PartName="/xl/workbook.xml" ContentType="${TYPE}.sheet.main+xml"/><Override PartName="/xl/styles.xml" ContentType="${TYPE}.styles+xml"/>${files
			.map(
				(_, at) =>
					`<Override PartName="/xl/worksheets/sheet${at + 1}.xml" ContentType="${TYPE}.worksheet+xml"/>`,
			)
			.join("")}</Types>`,
		"_rels/.rels": relations(relation("officeDocument", "xl/workbook.xml", "rId1")),
		"xl/workbook.xml": `<workbook ${MAIN} xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><sheets>${files
			.map(
				(file, at) =>
					`<sheet name="${file.replace(".csv", "")}" sheetId="${at + 1}" r:id="rId${at + 1}"/>`,
			)
			.join("")}</sheets></workbook>`,
		"xl/_rels/workbook.xml.rels": relations(
			...files.map((_, at) =>
				relation("worksheet", `worksheets/sheet${at + 1}.xml`, `rId${at + 1}`),
			),
			relation("styles", "styles.xml", "rIdStyles"),
		),
		"xl/styles.xml": `<styleSheet ${MAIN}><fonts count="1"><font/></fonts><fills count="1"><fill/></fills><borders count="1"><border/></borders><cellStyleXfs count="1"><xf/></cellStyleXfs><cellXfs count="${FORMATS.length}">${FORMATS.map((id) => `<xf numFmtId="${id}" applyNumberFormat="1" xfId="0"/>`).join("")}</cellXfs></styleSheet>`,
	};
	for (const [at, file] of files.entries())
		parts[`xl/worksheets/sheet${at + 1}.xml`] =
			`<worksheet ${MAIN}><sheetData>${rowsOf(file, sheets[file] as TextTable)}</sheetData></worksheet>`;
	return zipSync(
		Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, strToU8(text)])),
		{ mtime: new Date(1980, 0, 1) },
	);
}

function rowsOf(file: string, table: TextTable): string {
	const sheet = sheetOf(file);
	if (!sheet) throw new Error(file);
	const known = new Map(
		blockCells({ sheet, table }).map((cell) => [`${cell.row},${cell.at}`, cell]),
	);
	const rows = [
		table.header.map(textCell),
		...table.rows.map((cells, row) =>
			cells.map((text, at) => cellOf(text, known.get(`${row},${at}`))),
		),
	];
	return rows.map((cells) => `<row>${cells.join("")}</row>`).join("");
}

function cellOf(text: string, cell: BlockCell | undefined): string {
	const written = cell?.column.value.written;
	if (written === "date") return numberCell(daysOf(text), DATE);
	if (written === "dateTime") return numberCell(daysOf(text), MOMENT);
	if (/^\d\d:\d\d$/.test(text)) return numberCell(timeOf(text), TIME);
	if (written && /^\d+(\.\d+)?$/.test(text))
		return numberCell(Number(text), Number.isInteger(Number(text)) ? THOUSANDS : GENERAL);
	return textCell(text);
}

function daysOf(text: string): number {
	const [day = "", time = "00:00"] = text.split(" ");
	return (dayNumber(day) ?? Number.NaN) + DAY_0 + timeOf(time);
}

function timeOf(text: string): number {
	const [hours = 0, minutes = 0] = text.split(":").map(Number);
	return (hours * 60 + minutes) / 1440;
}

function numberCell(value: number, style = GENERAL): string {
	if (Number.isNaN(value)) throw new Error("not a number");
	return `<c s="${style}"><v>${value}</v></c>`;
}

function textCell(text: string): string {
	if (text === "") return "<c/>";
	const plain = text.replaceAll("&", "&amp;").replaceAll("<", "&lt;");
	return `<c t="inlineStr"><is><t xml:space="preserve">${plain}</t></is></c>`;
}
