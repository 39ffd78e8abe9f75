import type { Locator } from "playwright-core";
import type { Chance } from "../fuzz/chance.ts";
import type { Action } from "./action.ts";
import type { Soak } from "./soak.ts";
import { textFor } from "./textFor.ts";

/** What a person can press, tick, choose or fill in, where it can be seen. */
const WITHIN =
	":is(button, input:not([type=file]), select, textarea, summary):not(:disabled):visible";

/** Goes to a page that is not a grid, and does some things there, and in what opens. */
export function workOn(file: string, name: string): Action {
	return {
		name,
		weight: 4,
		async act(soak) {
			const { page, chance } = soak;
			await page.evaluate((hash) => {
				location.hash = hash;
			}, `#${file}`);
			await page.locator("#sheet h1").waitFor();
			let acted = false;
			for (let times = 2 + chance.below(5); times > 0; times--)
				acted = (await actOnce(soak)) || acted;
			return acted;
		},
	};
}

async function actOnce({ page, chance }: Soak) {
	const dialog = page.locator("dialog[open]");
	const around = (await dialog.count()) > 0 ? dialog.last() : page.locator("#sheet");
	const all = around.locator(WITHIN);
	const count = await all.count();
	if (count === 0) return false;
	const one = all.nth(chance.below(count));
	// What is drawn anew meanwhile is gone, as for a person who comes too late.
	return handled(one, chance, textFor(chance)).catch(() => false);
}

async function handled(one: Locator, chance: Chance, text: string): Promise<boolean> {
	const timeout = 2_000;
	const kind = await one.evaluate((element) =>
		element instanceof HTMLInputElement ? element.type : element.localName,
	);
	if (kind === "select") {
		const options = await one.locator("option").count();
		await one.selectOption({ index: chance.below(Math.max(1, options)) }, { timeout });
	} else if (/^(text|number|search|textarea)$/.test(kind)) {
		await one.fill(kind === "number" ? String(chance.below(40)) : text, { timeout });
		await one.press(chance.pick(["Tab", "Enter"]), { timeout });
	} else if (/^(date|time|month|datetime-local)$/.test(kind))
		await one.press("ArrowUp", { timeout });
	else await one.click({ timeout });
	return true;
}
