import type { Place } from "../../core/problem.ts";
import { later } from "../dom/later.ts";
import type { State } from "../state/store.ts";
import type { FindDialog } from "./findDialog.ts";

const finding = later(() => import("./findDialog.ts"));

/** What opens the window to find words in: a part that the first screen does not need. */
export function findOpener(state: () => State, goTo: (place: Place) => void): () => Promise<void> {
	let dialog: FindDialog | undefined;
	return async () => {
		const { FindDialog } = await finding.bring();
		dialog ??= new FindDialog(state, goTo);
		dialog.open();
	};
}
