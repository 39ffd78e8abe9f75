import type { Workbook } from "../../core/workbook.ts";

const KEY = "basinbook-draft";

export interface Draft {
	readonly workbook: Workbook;
	/** When it was kept, as this computer's clock had it. */
	readonly keptAt: string;
}

/** Keeps the workbook in this browser; says in words why where it cannot. */
export function keepDraft(workbook: Workbook): string | undefined {
	try {
		const draft: Draft = { workbook, keptAt: new Date().toISOString() };
		localStorage.setItem(KEY, JSON.stringify(draft));
		return undefined;
	} catch {
		return "This browser cannot keep a draft: save the workbook to a file before you close it.";
	}
}

/** The draft kept last, where there is one that can still be read. */
export function keptDraft(): Draft | undefined {
	try {
		const read: unknown = JSON.parse(localStorage.getItem(KEY) ?? "null");
		return isDraft(read) ? read : undefined;
	} catch {
		return undefined;
	}
}

function isDraft(read: unknown): read is Draft {
	if (typeof read !== "object" || read === null) return false;
	const { workbook, keptAt } = read as Partial<Draft>;
	return typeof keptAt === "string" && Object.values(workbook?.tables ?? {}).every(isTable);
}

function isTable(table: unknown): boolean {
	const { header, rows } = table as { header?: unknown; rows?: unknown };
	return isTexts(header) && Array.isArray(rows) && rows.every(isTexts);
}

function isTexts(cells: unknown): boolean {
	return Array.isArray(cells) && cells.every((cell) => typeof cell === "string");
}
