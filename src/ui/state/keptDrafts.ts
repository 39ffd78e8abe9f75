import { tablesIn } from "../../core/edit/tablesIn.ts";
import type { Descent } from "../../core/merge/descent.ts";
import type { Workbook } from "../../core/workbook.ts";
import { migrated } from "../../io/migrated.ts";
import { bringOldDrafts } from "./bringOldDrafts.ts";
import { type Draft, needsNoCopy, OWN } from "./draft.ts";
import { inDrafts } from "./inDrafts.ts";
import { keptDescent } from "./keptDescent.ts";
import { openDrafts } from "./openDrafts.ts";

/** Drafts that are kept, beside those of open windows. */
const MOST_DRAFTS = 12;

export interface KeptDraft extends Draft {
	/** Another window is writing it now. */
	readonly isOpen: boolean;
}

export interface ReadDraft {
	readonly workbook: Workbook;
	/** Sheets that could not be read any more. */
	readonly damaged: readonly string[];
	/** Where it came from when it was opened or last saved, where that was kept. */
	readonly descent?: Descent;
}

/** Drafts of earlier visits and of other windows, the one kept last first; none where the browser keeps nothing. */
export async function keptDrafts(): Promise<KeptDraft[]> {
	try {
		await bringOldDrafts();
	} catch {
		// Without localStorage there are no old drafts.
	}
	try {
		const open = await openDrafts();
		const heads: Draft[] = await inDrafts("readonly", ({ heads }) => heads.getAll());
		const drafts = heads
			.filter(({ id }) => id !== OWN)
			.map((draft) => ({ ...draft, isOpen: open.has(draft.id) }))
			.sort((a, b) => (a.keptAt < b.keptAt ? 1 : -1));
		const isKept = (draft: KeptDraft, at: number) => at < MOST_DRAFTS || draft.isOpen;
		await forget(drafts.filter((draft, at) => !isKept(draft, at)));
		return drafts.filter(isKept);
	} catch {
		return [];
	}
}

/** A draft as it was kept. @returns undefined where none of it can be read */
export async function readDraft({ id }: Draft): Promise<ReadDraft | undefined> {
	try {
		const kept: unknown = await inDrafts("readonly", ({ workbooks }) => workbooks.get(id));
		const { tables, damaged } = tablesIn(kept);
		if (Object.keys(tables).length === 0) return undefined;
		const workbook = migrated({ tables, format: Number((kept as Workbook).format) || 1 });
		needsNoCopy(workbook);
		const descent = keptDescent((kept as { descent?: unknown }).descent);
		return { workbook, damaged, ...(descent && { descent }) };
	} catch {
		return undefined;
	}
}

async function forget(drafts: readonly Draft[]): Promise<void> {
	for (const { id } of drafts)
		await inDrafts("readwrite", ({ heads, workbooks }) => {
			heads.delete(id);
			return workbooks.delete(id);
		});
}
