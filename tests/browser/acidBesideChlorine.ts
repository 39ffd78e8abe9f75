import type { Page } from "playwright-core";

/**
 * Walks what a part of the page says, in the order of the document, and finds each
 * place where something is to be done with an acid and next something with chlorine
 * (or the other way round), and no caution stands between the two.
 *
 * A block is the text of a paragraph, list item, table row, heading or picture. It is
 * an act where it tells to mix, put, pour, soak … A block that warns is a caution; one
 * that names both and does not warn is itself a fault. Heads of tables say nothing to do.
 */
export function acidBesideChlorine(page: Page, part: string): Promise<string[]> {
	return page.evaluate((selector) => {
		const BLOCKS = "p, li, tr, h1, h2, h3, figcaption, dt, dd, label, button, svg, summary";
		const act =
			/\b(mix(es|ed|ing)?|put|pour|measure|dilute|fill|stir|soak (under|in|it|them)|descale in|makes? (up|\d)|equal parts)\b/i;
		const acid = /\b(vinegar|acid|descal\w+)\b/i;
		const chlorine = /\b(chlorine|bleach|hypochlorite|chlorinated|the solution)\b/i;
		const caution =
			/\b(never|no)\b[^.]*\b(chlorine|vinegar|acid|mix)|poisonous gas|before any chlorine/i;
		const root = document.querySelector(selector);
		// The grid draws only what is in view; its plain table beside it has every row.
		const blocks = [...(root?.querySelectorAll<HTMLElement>(BLOCKS) ?? [])].filter(
			(block) => block.querySelector(BLOCKS) === null && !block.closest(".grid, thead"),
		);
		const faults: string[] = [];
		let last: { kind: string; text: string } | undefined;
		for (const block of blocks) {
			const parts = [...block.childNodes].map((node) => node.textContent);
			const text = parts.join(" ").replace(/\s+/g, " ").trim();
			if (caution.test(text)) last = undefined;
			else if (act.test(text) && (acid.test(text) || chlorine.test(text))) {
				if (acid.test(text) && chlorine.test(text)) faults.push(`both in one: ${text}`);
				const kind = acid.test(text) ? "acid" : "chlorine";
				if (last && last.kind !== kind) faults.push(`${last.text} | then | ${text}`);
				last = { kind, text };
			}
		}
		return faults;
	}, part);
}
