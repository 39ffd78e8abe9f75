import { afterAll, beforeAll, vi } from "vitest";

/** As much of an element as a page for paper needs: its children and their text, apart from others' but within a line. */
class TextElement {
	readonly tagName: string;
	readonly #apart: string;
	readonly #children: (TextElement | string)[] = [];

	constructor(tag: string) {
		this.tagName = tag.toUpperCase();
		this.#apart = tag === "span" ? "" : " ";
	}
	append(...children: readonly (TextElement | string)[]): void {
		this.#children.push(...children);
	}
	setAttribute(): void {}
	addEventListener(): void {}
	get childElementCount(): number {
		return this.#children.filter((child) => typeof child !== "string").length;
	}
	get textContent(): string {
		return this.#children
			.map((child) => (typeof child === "string" ? child : child.#inLine))
			.join("");
	}
	get #inLine(): string {
		return this.#apart + this.textContent + this.#apart;
	}
}

/** For the tests of this file, a document in which pages for paper can be made and read. */
export function withTextDocument(): void {
	beforeAll(() => {
		const body = { dataset: { version: "test" } };
		vi.stubGlobal("document", { createElement: (tag: string) => new TextElement(tag), body });
	});
	afterAll(() => void vi.unstubAllGlobals());
}

/** What a page for paper says, in one line. */
export function textOf(pages: readonly { readonly textContent: string | null }[]): string {
	return pages
		.map(({ textContent }) => textContent)
		.join(" ")
		.replace(/\s+/g, " ")
		.trim();
}
