/** What stands on the stick in one language. */
export interface StickWords {
	/** The file to double-click. */
	readonly openFile: string;
	readonly readMeFile: string;
	/** The demo's workbook, in letters that every stick takes. */
	readonly demoFile: string;
	/** Short for a million bytes, with the space before it. */
	readonly megabytes: string;
	readonly opening: string;
	readonly openLink: string;
	/** What to do where the page does not go on by itself. */
	readonly stuck: string;
	/** Sizes are whole texts, such as "1.4 MB"; buttons are as the workbook writes them. */
	readMe(version: string, size: StickSize, button: (english: string) => string): string;
}

export interface StickSize {
	readonly folder: string;
	readonly zip: string;
}
