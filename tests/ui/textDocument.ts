import { afterAll, beforeAll, vi } from "vitest";

/** As much of an element as a page for paper needs: its children and their text. */
class TextElement {
	readonly #children: (TextElement | string)[] = [];

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
			.map((child) => (typeof child === "string" ? child : ` ${child.textContent} `))
			.join("");
	}
}

/** For the tests of this file, a document in which pages for paper can be made and read. */
export function withTextDocument(): void {
	beforeAll(() => {
		const body = { dataset: { version: "test" } };
		vi.stubGlobal("document", { createElement: () => new TextElement(), body });
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
