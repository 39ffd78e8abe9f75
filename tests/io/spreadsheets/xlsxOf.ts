import { strToU8, zipSync } from "fflate";

/** A workbook of sheets by name, each the inside of its <sheetData>. */
export function xlsxOf(
	sheets: Readonly<Record<string, string>>,
	{ styles = "", strings = "", book = "" } = {},
): Uint8Array {
	const names = Object.keys(sheets);
	const parts: Record<string, string> = {
		"[Content_Types].xml": "<Types/>",
		"xl/workbook.xml": `<workbook xmlns:r="r">${book}<sheets>${names
			.map((name, at) => `<sheet name="${name}" r:id="r${at}"/>`)
			.join("")}</sheets></workbook>`,
		"xl/_rels/workbook.xml.rels": `<Relationships>${names
			.map((_, at) => `<Relationship Id="r${at}" Target="worksheets/${at}.xml"/>`)
			.join("")}</Relationships>`,
		"xl/styles.xml": `<styleSheet>${styles}</styleSheet>`,
		"xl/sharedStrings.xml": `<sst>${strings}</sst>`,
	};
	for (const [at, name] of names.entries())
		parts[`xl/worksheets/${at}.xml`] =
			`<worksheet><sheetData>${sheets[name]}</sheetData></worksheet>`;
	return zipped(parts);
}

/** A spreadsheet of tables by name, each the inside of its <table:table>. */
export function odsOf(sheets: Readonly<Record<string, string>>): Uint8Array {
	const tables = Object.entries(sheets).map(
		([name, rows]) => `<table:table table:name="${name}">${rows}</table:table>`,
	);
	return zipped({
		mimetype: "application/vnd.oasis.opendocument.spreadsheet",
		"content.xml": `<office:document-content><office:body><office:spreadsheet>${tables.join("")}</office:spreadsheet></office:body></office:document-content>`,
	});
}

function zipped(parts: Readonly<Record<string, string>>): Uint8Array {
	return zipSync(
		Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, strToU8(text)])),
	);
}
