import type { Descent } from "../../core/merge/descent.ts";
import { say } from "../../core/say.ts";
import { unitNameIn } from "../../core/sheets/unitNameIn.ts";
import type { Workbook } from "../../core/workbook.ts";
import { FORMAT } from "../../io/migrated.ts";
import { inDrafts } from "./inDrafts.ts";
import { showAsOpen } from "./openDrafts.ts";

/** What a person knows a draft by. */
export interface Draft {
	readonly id: string;
	/** As it was typed; "" where the unit has no name. */
	readonly unit: string;
	/** When it was kept, as this computer's clock had it. */
	readonly keptAt: string;
}

/** This window's own draft: two windows never write over each other, nor does the copy of a tab. */
export const OWN = `${Date.now().toString(36)}-${Math.random().toString(36).slice(2)}`;

/** A workbook, and where it came from when it was opened or last saved. */
interface Kept {
	readonly workbook: Workbook;
	readonly descent: Descent | undefined;
}

/** How far the draft of what was typed last has come. */
export interface Keeping {
	/** It is not on the disk yet; a browser that is killed now may take the last edit with it. */
	readonly isWriting: boolean;
	/** Why it is not there, in words. */
	readonly trouble?: string;
}

/** A disk that takes longer is told of. Measured: 25 to 140 ms, at a load of 20 on two cores at most 435. */
const SLOW_MS = 2000;

let latest: Kept | undefined;
let writing: Kept | undefined;
/** A draft that was just read: it needs no second copy before it is edited. */
let read: Workbook | undefined;

/**
 * Keeps the workbook in this browser, and tells when it is there, or in words why it is not.
 *
 * Edits that come while one is being written are written together after it.
 */
export async function keepDraft(
	workbook: Workbook,
	descent: Descent | undefined,
	told: (keeping: Keeping) => void,
): Promise<void> {
	if (workbook === read) return;
	if (workbook === latest?.workbook && descent === latest.descent) return;
	read = undefined;
	latest = { workbook, descent };
	if (writing) return;
	showAsOpen(OWN);
	while (writing !== latest) {
		writing = latest;
		told({ isWriting: true });
		const slow = setTimeout(() => told({ isWriting: true, trouble: stillWriting() }), SLOW_MS);
		const trouble = await write(latest).then(() => undefined, troubleOf);
		clearTimeout(slow);
		told({ isWriting: writing !== latest, ...(trouble && { trouble }) });
	}
	writing = undefined;
}

/** A draft that was just read needs no second copy before it is edited. */
export function needsNoCopy(workbook: Workbook): void {
	read = workbook;
}

/** Writes at once what waits for its turn: the page is about to go. */
export function hurryDraft(): void {
	if (writing && latest && writing !== latest) void write(latest).catch(() => undefined);
}

async function write({ workbook, descent }: Kept): Promise<void> {
	const head: Draft = { id: OWN, unit: unitNameIn(workbook), keptAt: new Date().toISOString() };
	await inDrafts("readwrite", ({ heads, workbooks }) => {
		heads.put(head, OWN);
		// Rows that both hold are written once.
		return workbooks.put({ ...workbook, format: workbook.format ?? FORMAT, descent }, OWN);
	});
}

function stillWriting(): string {
	return say`The draft is still being written: this computer's disk is slow. Do not close the window yet.`;
}

function troubleOf(error: unknown): string {
	return (error as Error | null)?.name === "QuotaExceededError"
		? say`There is no room left in this browser, so it cannot keep a draft: save the workbook to a file before you close it.`
		: say`This browser cannot keep a draft: save the workbook to a file before you close it.`;
}
