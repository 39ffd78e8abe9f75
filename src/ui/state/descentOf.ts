import type { Copy, Descent, Save } from "../../core/merge/descent.ts";
import { rootDescent } from "../../core/merge/rootDescent.ts";
import { withSave } from "../../core/merge/withSave.ts";
import type { Workbook } from "../../core/workbook.ts";
import { clearForm } from "../../io/history/clearForm.ts";
import { newId } from "./newId.ts";
import { savedBy } from "./savedBy.ts";
import type { Saved, State } from "./store.ts";

const roots = new WeakMap<Workbook, Descent>();

/** Where a workbook came from when it was opened or last saved; undefined for an old draft, of which nothing is known. */
export function descentOf({ descent, saved }: Saved): Descent | undefined {
	if (descent || !saved) return descent;
	const root = roots.get(saved) ?? rootDescent(clearForm(saved));
	roots.set(saved, root);
	return root;
}

/** The workbook of the moment as a copy: what was edited since the last save counts as a save of now. */
export function copyNow({ workbook, book }: Pick<State, "workbook" | "book">): Copy {
	const now = clearForm(workbook);
	const before = descentOf(book.in);
	return { workbook: now, descent: before ? withSave(before, now, saveNow()) : rootDescent(now) };
}

function saveNow(): Save {
	// The Swedish way of writing a time is the international one, in this computer's own day.
	const [day = "", time = ""] = new Date().toLocaleString("sv").split(" ");
	return { id: newId(), at: `${day}T${time.slice(0, 5)}`, by: savedBy() };
}
