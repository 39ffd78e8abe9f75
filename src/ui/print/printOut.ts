import { byId, fill } from "../dom/el.ts";
import type { PrintOut, View } from "../page.ts";
import type { State } from "../state/store.ts";
import { printedHead } from "./printedHead.ts";
import { standPaper } from "./standPaper.ts";

/** Prints a form in place of the screen. */
export function printOut(out: PrintOut, state: State): void {
	putOnPaper(out, state);
	window.print();
}

/**
 * Before the browser prints, by a button of the page or by its own: the form that stands on
 * the page already, else the form of the page, else the page as it is, with its cautions in
 * the head that is repeated.
 */
export function beforePrint(view: View | undefined, state: State): void {
	if (document.body.classList.contains("on-paper")) return;
	if (view?.onPaper && putOnPaper(view.onPaper, state)) return;
	const cautions = document.querySelectorAll("#sheet .cautions");
	fill(
		byId("printed-head"),
		...printedHead(state),
		...[...cautions].map((list) => list.cloneNode(true)),
	);
}

/**
 * The form stands in the document only while the browser prints; the styles of print.css
 * show it and nothing else. A form of no pages leaves the page as it is.
 */
function putOnPaper(out: PrintOut, state: State): boolean {
	const pages = out.pages(state);
	if (pages.length === 0) return false;
	fill(byId("paper"), ...pages);
	standPaper(pages[0]?.classList.contains("lying") ? "lying" : "upright");
	document.body.classList.add("on-paper");
	// The same function again is no second listener: a browser that tells of no end gathers none.
	window.addEventListener("afterprint", takeOffPaper, { once: true });
	return true;
}

function takeOffPaper(): void {
	document.body.classList.remove("on-paper");
	standPaper("lying");
	fill(byId("paper"));
}
