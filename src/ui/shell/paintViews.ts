import { el, fill } from "../dom/el.ts";
import { hashOf } from "./hashOf.ts";
import { viewsWith } from "./viewsWith.ts";

/** The switch over a page that is one of several views: a link each, that of the open one marked. Who switches keeps the focus. */
export function paintViews(nav: HTMLElement, open: string): void {
	const views = viewsWith(open);
	const links = () => [...nav.querySelectorAll("a")];
	nav.hidden = views.length === 0;
	if (
		links()
			.map((link) => link.hash)
			.join() !== views.map(({ file }) => hashOf(file)).join()
	)
		fill(nav, ...views.map(({ file, words }) => el("a", { href: hashOf(file) }, words)));
	for (const link of links())
		if (link.hash === hashOf(open)) link.setAttribute("aria-current", "page");
		else link.removeAttribute("aria-current");
}
