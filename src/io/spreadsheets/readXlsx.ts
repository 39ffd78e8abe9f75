import type { NamedBytes } from "../unzip.ts";
import { CellsOfSheet, type SpreadsheetSheet } from "./cellsOfSheet.ts";
import { clearText, type Shown } from "./clearText.ts";
import { readXml } from "./readXml.ts";
import { builtInFormat, shownBy } from "./shownBy.ts";

type Parts = ReadonlyMap<string, Uint8Array>;

const FOLDER = "xl/";
export const XLSX_BOOK = `${FOLDER}workbook.xml`;

/**
 * The sheets of an .xlsx workbook (ECMA-376 part 1, 18.3), each as text.
 *
 * Numbers come as they are stored, dates and times as their format shows them, formulas by
 * the value that was last worked out. A formula that never was stands as its own text, so
 * that it cannot pass for a blank cell.
 *
 * @throws where a part of it cannot be read
 */
export function readXlsx(files: readonly NamedBytes[]): SpreadsheetSheet[] {
	const parts: Parts = new Map(files.map(({ name, bytes }) => [name, bytes]));
	const targets = targetsIn(parts);
	const styles = stylesIn(parts);
	const texts = sharedTextsIn(parts);
	const sheets: { name: string; target: string }[] = [];
	let from1904 = false;
	readXml(partOf(parts, XLSX_BOOK), {
		open(name, attribute) {
			if (name === "workbookPr") from1904 ||= /^(1|true)$/.test(attribute("date1904") ?? "");
			if (name !== "sheet") return;
			const target = targets.get(attribute("id") ?? "");
			if (target) sheets.push({ name: attribute("name") ?? "", target });
		},
	});
	return sheets
		.filter(({ target }) => target.includes("worksheets/"))
		.map(({ name, target }) => sheetOf(name, partOf(parts, target), { texts, styles, from1904 }));
}

interface Book {
	readonly texts: readonly string[];
	readonly styles: readonly Shown[];
	readonly from1904: boolean;
}

function sheetOf(name: string, bytes: Uint8Array, book: Book): SpreadsheetSheet {
	const cells = new CellsOfSheet(name);
	let row = -1;
	let at = -1;
	let type = "n";
	let shown: Shown = "number";
	let value = "";
	let formula = "";
	let within = "";
	let isPhonetic = false;
	readXml(bytes, {
		open(element, attribute) {
			within = isPhonetic ? "" : element;
			if (element === "row") {
				row = placeIn(attribute("r"))?.row ?? row + 1;
				at = -1;
			} else if (element === "c") {
				const place = placeIn(attribute("r"));
				row = place?.row ?? Math.max(0, row);
				at = place && place.at >= 0 ? place.at : at + 1;
				type = attribute("t") ?? "n";
				shown = book.styles[Number(attribute("s") ?? 0)] ?? "number";
				value = "";
				formula = "";
			} else if (element === "rPh") isPhonetic = true;
		},
		text(text) {
			if (within === "v" || within === "t") value += text;
			else if (within === "f") formula += text;
		},
		close(element) {
			within = "";
			if (element === "rPh") isPhonetic = false;
			if (element !== "c") return;
			const isNumber = (type === "n" || type === "d") && value.trim() !== "";
			const text =
				value === "" && formula !== "" ? `=${formula}` : textOf(value, type, shown, book);
			cells.put(row, at, text, isNumber);
		},
	});
	return cells.sheet();
}

function textOf(value: string, type: string, shown: Shown, { texts, from1904 }: Book): string {
	if (value === "") return "";
	if (type === "s") return texts[Number(value)] ?? "";
	if (type === "b") return value === "1" ? "TRUE" : "FALSE";
	if (type === "d") return value.replace("T", " ").replace(/Z$|\.0+Z?$/, "");
	const serial = Number(value);
	return type === "n" && Number.isFinite(serial)
		? clearText(serial, shown, from1904)
		: plain(value);
}

/** Letters that XML has no place for are written as _x000D_. */
function plain(text: string): string {
	return text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, code) => String.fromCharCode(parseInt(code, 16)));
}

/** Row and column of a cell's name, from 0. @example "B3" → row 2, at 1; "3" → row 2 */
function placeIn(name: string | undefined): { row: number; at: number } | undefined {
	const [, letters = "", digits] = /^([A-Z]{0,3})([1-9]\d{0,6})$/.exec(name ?? "") ?? [];
	if (digits === undefined) return undefined;
	const at = [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
	return { row: Number(digits) - 1, at };
}

/** Where each part of the workbook is, by the name that it is referred to with. */
function targetsIn(parts: Parts): Map<string, string> {
	const targets = new Map<string, string>();
	readXml(partOf(parts, `${FOLDER}_rels/workbook.xml.rels`), {
		open(name, attribute) {
			const target = attribute("Target") ?? "";
			if (name !== "Relationship" || attribute("TargetMode") === "External") return;
			targets.set(
				attribute("Id") ?? "",
				target.startsWith("/") ? target.slice(1) : `${FOLDER}${target}`,
			);
		},
	});
	return targets;
}

function sharedTextsIn(parts: Parts): string[] {
	const bytes = parts.get(`${FOLDER}sharedStrings.xml`);
	const texts: string[] = [];
	if (!bytes) return texts;
	let text = "";
	let isText = false;
	let isPhonetic = false;
	readXml(bytes, {
		open(name) {
			if (name === "si") text = "";
			if (name === "rPh") isPhonetic = true;
			isText = name === "t" && !isPhonetic;
		},
		text(piece) {
			if (isText) text += piece;
		},
		close(name) {
			isText = false;
			if (name === "rPh") isPhonetic = false;
			if (name === "si") texts.push(plain(text));
		},
	});
	return texts;
}

/** How each style of a cell shows a number. */
function stylesIn(parts: Parts): Shown[] {
	const bytes = parts.get(`${FOLDER}styles.xml`);
	const codes = new Map<string, Shown>();
	const styles: Shown[] = [];
	if (!bytes) return styles;
	let isOfCells = false;
	readXml(bytes, {
		open(name, attribute) {
			if (name === "cellXfs") isOfCells = true;
			const id = attribute("numFmtId") ?? "0";
			if (name === "numFmt") codes.set(id, shownBy(attribute("formatCode") ?? ""));
			if (name === "xf" && isOfCells) styles.push(codes.get(id) ?? builtInFormat(Number(id)));
		},
		close(name) {
			if (name === "cellXfs") isOfCells = false;
		},
	});
	return styles;
}

function partOf(parts: Parts, name: string): Uint8Array {
	const bytes = parts.get(name);
	if (!bytes) throw new Error(`no ${name}`);
	return bytes;
}
