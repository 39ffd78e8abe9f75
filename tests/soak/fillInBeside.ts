import type { Action } from "./action.ts";
import { chooseCell } from "./chooseCell.ts";
import { textFor } from "./textFor.ts";

/** Opens the margin on a cell and fills the cell in there. */
export const fillInBeside: Action = {
	name: "fill in the field beside the grid",
	weight: 16,
	async act(soak) {
		const { page, chance } = soak;
		if (!(await chooseCell(page, chance))) return false;
		await page.keyboard.press("Alt+Enter");
		await soak.drawn();
		// A second click at once opens the cell itself, as a double click does; then nothing opens beside it.
		const list = page.locator("select#entry-field:visible");
		const options = await list.locator("option").count();
		if (options > 0) {
			await list.selectOption({ index: chance.below(options) });
			return true;
		}
		const field = page.locator("input#entry-field:visible");
		if ((await field.count()) === 0) return false;
		const text = textFor(chance);
		const cell = await page.locator(".entry-label").textContent();
		await field.fill(text);
		await field.press("Enter");
		const kept = await page.locator("input#entry-field").inputValue();
		const now = await page.locator(".entry-label").textContent();
		if (kept !== text)
			soak.trouble(
				`"${text}" was typed into ${cell} (${page.url().split("#")[1]}), and "${kept}" stands in ${now}`,
			);
		return true;
	},
};
