import { tablesIn } from "../../core/edit/tablesIn.ts";
import { unitNameIn } from "../../core/sheets/unitNameIn.ts";
import { inDrafts } from "./inDrafts.ts";

const PREFIX = "basinbook-draft-";
/** Edition of the file format when drafts were kept there. */
const OLD_FORMAT = 1;

/** Brings drafts that earlier editions of this page kept in localStorage to where drafts are now. */
export async function bringOldDrafts(): Promise<void> {
	for (const id of Object.keys(localStorage).filter((key) => key.startsWith(PREFIX))) {
		const { workbook, keptAt } = parsed(localStorage.getItem(id) ?? "") ?? {};
		const { tables } = tablesIn(workbook);
		if (Object.keys(tables).length === 0) continue;
		const head = { id, unit: unitNameIn({ tables }), keptAt: String(keptAt ?? "") };
		await inDrafts("readwrite", ({ heads, workbooks }) => {
			heads.put(head, id);
			return workbooks.put({ tables, format: OLD_FORMAT }, id);
		});
		localStorage.removeItem(id);
	}
}

function parsed(text: string): { workbook?: unknown; keptAt?: unknown } | undefined {
	try {
		return JSON.parse(text);
	} catch {
		return undefined;
	}
}
