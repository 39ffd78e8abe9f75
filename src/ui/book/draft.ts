import { say } from "../../core/say.ts";
import type { Workbook } from "../../core/workbook.ts";

const PREFIX = "basinbook-draft-";
/** Drafts of earlier visits kept beside this window's own. */
const MOST_DRAFTS = 8;
/** This window's own draft: two windows never write over each other. */
const OWN = `${PREFIX}${Date.now().toString(36)}-${Math.random().toString(36).slice(2)}`;

let tidied = false;

export interface Draft {
	readonly workbook: Workbook;
	/** When it was kept, as this computer's clock had it. */
	readonly keptAt: string;
}

/** Keeps the workbook in this browser; says in words why where it cannot. */
export function keepDraft(workbook: Workbook): string | undefined {
	try {
		const draft: Draft = { workbook, keptAt: new Date().toISOString() };
		localStorage.setItem(OWN, JSON.stringify(draft));
		if (!tidied)
			for (const { key } of readDrafts().slice(MOST_DRAFTS)) localStorage.removeItem(key);
		tidied = true;
		return undefined;
	} catch {
		return say`This browser cannot keep a draft: save the workbook to a file before you close it.`;
	}
}

/** The drafts that can still be read, the one kept last first. */
export function keptDrafts(): Draft[] {
	try {
		return readDrafts().flatMap(({ draft }) => (draft ? [draft] : []));
	} catch {
		return [];
	}
}

/** Everything kept under a draft's name; what cannot be read stands last. */
function readDrafts(): { key: string; draft: Draft | undefined }[] {
	return Object.keys(localStorage)
		.filter((key) => key.startsWith(PREFIX))
		.map((key) => ({ key, draft: parsed(localStorage.getItem(key)) }))
		.sort((a, b) => ((a.draft?.keptAt ?? "") < (b.draft?.keptAt ?? "") ? 1 : -1));
}

function parsed(text: string | null): Draft | undefined {
	try {
		const read: unknown = JSON.parse(text ?? "null");
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
	if (typeof table !== "object" || table === null) return false;
	const { header, rows } = table as { header?: unknown; rows?: unknown };
	return isTexts(header) && Array.isArray(rows) && rows.every(isTexts);
}

function isTexts(cells: unknown): boolean {
	return Array.isArray(cells) && cells.every((cell) => typeof cell === "string");
}
