import { byId, fill } from "../dom/el.ts";
import type { PrintOut } from "../page.ts";
import type { State } from "../state/store.ts";

/**
 * Prints pages made for paper in place of the screen.
 *
 * The pages stand in the document only while the browser prints; the styles of
 * print.css show them and nothing else.
 */
export function printOut(out: PrintOut, state: State): void {
	const paper = byId("paper");
	fill(paper, ...out.pages(state));
	document.body.classList.add("on-paper");
	const done = () => {
		document.body.classList.remove("on-paper");
		fill(paper);
	};
	window.addEventListener("afterprint", done, { once: true });
	window.print();
}
