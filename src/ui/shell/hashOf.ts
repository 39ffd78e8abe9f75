/** The address of a page within the workbook. */
export function hashOf(file: string): string {
	return `#${file}`;
}
