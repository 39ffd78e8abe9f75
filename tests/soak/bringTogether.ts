import type { Action } from "./action.ts";
import { dropFiles } from "./dropFiles.ts";

/** Conflicts that are chosen one by one; of more, all at once. */
const MOST_CHOSEN = 4;

export const bringTogether: Action = {
	name: "bring together with what was saved last",
	weight: 2,
	async act({ page, chance, saved }) {
		if (!saved) return false;
		await page.evaluate(() => {
			location.hash = "#two-copies";
		});
		const copies = page.locator("#sheet .two-copies");
		// Without another copy it is empty, and so nothing that could be seen.
		await copies.waitFor({ state: "attached" });
		await dropFiles(page, [{ name: "saved.zip", bytes: saved }], chance);
		const conflicts = await copies.locator("fieldset.conflict").all();
		if (conflicts.length > MOST_CHOSEN)
			await copies.getByRole("button", { name: "All as in" }).nth(chance.below(2)).click();
		else
			for (const conflict of conflicts)
				await conflict.getByRole("radio").nth(chance.below(2)).check();
		const take = copies.getByRole("button", { name: "Bring both together" });
		if ((await take.count()) === 0) return true;
		await take.click();
		await page.locator("#told p", { hasText: "one workbook now" }).waitFor();
		return true;
	},
};
