/** Whether what a zip holds is a spreadsheet's own file, .xlsx or .ods. @param names of its entries */
export function isSpreadsheet(names: readonly string[]): boolean {
	return (
		names.includes("xl/workbook.xml") ||
		(names.includes("content.xml") && names.includes("mimetype"))
	);
}
