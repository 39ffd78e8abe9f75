import { say } from "../../core/say.ts";
import { type SavedFile, savedFile } from "./savedFile.ts";

interface Kind {
	readonly description: string;
	readonly accept: Readonly<Record<string, readonly string[]>>;
}

/** The browser's own windows for files; many browsers have none that a page may write through. */
interface Pickers {
	showSaveFilePicker?(options: {
		suggestedName: string;
		types: readonly Kind[];
	}): Promise<FileSystemFileHandle>;
	showOpenFilePicker?(options: {
		multiple: true;
		types: readonly Kind[];
	}): Promise<readonly FileSystemFileHandle[]>;
}

const pickers = globalThis as Pickers;
const zip = { "application/zip": [".zip"] };

export function canWriteFiles(): boolean {
	return pickers.showSaveFilePicker !== undefined;
}

/** Asks where to save. @returns undefined where the person closes the window without an answer */
export function askWhereToSave(suggestedName: string): Promise<SavedFile | undefined> {
	return answered(async () => {
		const types = [{ description: say`Workbook`, accept: zip }];
		const handle = await pickers.showSaveFilePicker?.({ suggestedName, types });
		return handle && savedFile(handle);
	});
}

/** Asks which files to open. @returns undefined where the person closes the window without an answer */
export function askWhatToOpen(): Promise<readonly FileSystemFileHandle[] | undefined> {
	return answered(async () => {
		const accept = {
			...zip,
			"text/csv": [".csv"],
			"text/plain": [".txt", ".tsv"],
			"application/vnd.openxmlformats-officedocument.spreadsheetml.sheet": [".xlsx"],
			"application/vnd.oasis.opendocument.spreadsheet": [".ods"],
			"application/json": [".json"],
		};
		const types = [{ description: say`Workbook or sheets`, accept }];
		return pickers.showOpenFilePicker?.({ multiple: true, types });
	});
}

async function answered<T>(ask: () => Promise<T>): Promise<T | undefined> {
	try {
		return await ask();
	} catch (error) {
		if ((error as Error).name === "AbortError") return undefined;
		throw error;
	}
}
