import { LONGEST_CELL, MOST_COLUMNS } from "../csvProblems.ts";
import type { NamedBytes } from "../unzip.ts";
import { CellsOfSheet, type SpreadsheetSheet } from "./cellsOfSheet.ts";
import { clearText } from "./clearText.ts";
import { readXml } from "./readXml.ts";

const ODS_CONTENT = "content.xml";

/** Kinds of value that say nothing of how numbers are written. */
/** Kinds of cell that hold a number, and how it is shown. */
const NUMBERS: ReadonlyMap<string, "number" | "percent"> = new Map([
	["float", "number"],
	["currency", "number"],
	["percentage", "percent"],
]);
const TEXTS = new Set(["boolean", "string"]);

type Attribute = (name: string) => string | undefined;

/** One cell, or several alike beside each other. */
interface Cell {
	readonly times: number;
	/** The clear text of what it holds, where that is no text. */
	readonly value: string | undefined;
	readonly isNumber: boolean;
	paragraphs: string[];
}

/**
 * The sheets of an .ods spreadsheet (OpenDocument 1.3 part 3, 9), each as text.
 *
 * Numbers, days and times come as they are stored, not as they are shown.
 *
 * @throws where it cannot be read
 */
export function readOds(files: readonly NamedBytes[]): SpreadsheetSheet[] {
	const content = files.find(({ name }) => name === ODS_CONTENT);
	if (!content) throw new Error(`no ${ODS_CONTENT}`);
	const sheets: CellsOfSheet[] = [];
	let row = 0;
	let rows = 1;
	let at = 0;
	let cell: Cell | undefined;
	const path: string[] = [];
	const isInCell = (depth: number) => path.at(-depth)?.endsWith("table-cell") ?? false;
	readXml(content.bytes, {
		open(name, attribute) {
			path.push(name);
			if (name === "table" && !cell) {
				sheets.push(new CellsOfSheet(attribute("name") ?? ""));
				row = 0;
			} else if (name === "table-row" && !cell) {
				rows = timesIn(attribute("number-rows-repeated"));
				at = 0;
			} else if (name.endsWith("table-cell") && !cell) cell = cellOf(attribute);
			else if (cell && isInCell(2) && name === "p") cell.paragraphs.push("");
			else if (cell && name === "s")
				add(cell, " ".repeat(Math.min(timesIn(attribute("c")), LONGEST_CELL)));
			else if (cell && name === "tab") add(cell, "\t");
			else if (cell && name === "line-break") add(cell, "\n");
		},
		text(text) {
			if (cell && isParagraph(path)) add(cell, text);
		},
		close(name) {
			path.pop();
			if (cell && name.endsWith("table-cell") && !path.some((one) => one.endsWith("table-cell"))) {
				const text = cell.value ?? cell.paragraphs.join("\n");
				if (text.trim() !== "") repeated(sheets.at(-1), { row, rows, at, cell, text });
				at += cell.times;
				cell = undefined;
			} else if (name === "table-row" && !cell) row += rows;
		},
	});
	return sheets.map((sheet) => sheet.sheet());
}

/** Text of the cell itself, not of a note or a picture that hangs on it. */
function isParagraph(path: readonly string[]): boolean {
	const from = path.findLastIndex((name) => name.endsWith("table-cell"));
	return path[from + 1] === "p" && !path.includes("annotation");
}

function add(cell: Cell, text: string): void {
	const last = cell.paragraphs.length - 1;
	if (last >= 0) cell.paragraphs[last] += text;
}

interface Block {
	readonly row: number;
	readonly rows: number;
	readonly at: number;
	readonly cell: Cell;
	readonly text: string;
}

function repeated(sheet: CellsOfSheet | undefined, { row, rows, at, cell, text }: Block): void {
	for (let down = 0; down < rows; down++)
		for (let across = 0; across < Math.min(cell.times, MOST_COLUMNS + 1); across++)
			sheet?.put(row + down, at + across, text, cell.isNumber);
}

function cellOf(attribute: Attribute): Cell {
	const times = timesIn(attribute("number-columns-repeated"));
	const type = attribute("value-type") ?? "";
	const value = valueIn(type, attribute);
	const isDamaged = NUMBERS.has(type) && !isNumeral(attribute("value"));
	const isNumber = value !== undefined && !TEXTS.has(type) && !isDamaged;
	return { times, value, isNumber, paragraphs: [] };
}

function valueIn(type: string, attribute: Attribute): string | undefined {
	const shown = NUMBERS.get(type);
	// What is damaged stays as it is, for the person to see; what is not there is no 0.
	if (shown)
		return isNumeral(attribute("value"))
			? clearText(Number(attribute("value")), shown)
			: attribute("value");
	if (type === "date")
		return attribute("date-value")
			?.replace("T", " ")
			.replace(/\.\d+$/, "");
	if (type === "time") return clockIn(attribute("time-value") ?? "");
	if (type === "boolean") return attribute("boolean-value")?.toUpperCase();
	return type === "string" ? attribute("string-value") : undefined;
}

function isNumeral(text = ""): boolean {
	return text.trim() !== "" && Number.isFinite(Number(text));
}

/** @example "PT07H30M00S" → "07:30" */
function clockIn(duration: string): string | undefined {
	const [, hours, minutes = "0", seconds = "0"] =
		/^PT(\d+)H(?:(\d+)M)?(?:(\d+)(?:\.\d+)?S)?$/.exec(duration) ?? [];
	if (hours === undefined) return undefined;
	return clearText(
		(Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds)) / 86_400,
		"time",
	);
}

/** How often a row, a cell or a blank is repeated. */
function timesIn(text: string | undefined): number {
	const times = Number(text ?? 1);
	return Number.isInteger(times) && times > 0 ? times : 1;
}
