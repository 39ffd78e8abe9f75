import type { Page } from "playwright-core";
import type { Chance } from "../fuzz/chance.ts";

/** Clicks some cell of the grid that can be seen. @returns false where the page has no grid */
export async function chooseCell(page: Page, chance: Chance): Promise<boolean> {
	const share = chance.below(1_000_000) / 1_000_000;
	const place = await page.evaluate((part) => {
		const cells = [...document.querySelectorAll<HTMLElement>(".grid .ht_master tbody td")];
		const cell = cells[Math.floor(part * cells.length)];
		cell?.scrollIntoView({ block: "nearest", inline: "nearest" });
		const box = cell?.getBoundingClientRect();
		if (!box || box.width === 0) return undefined;
		const [x, y] = [box.left + box.width / 2, box.top + Math.min(box.height / 2, 12)];
		return document.elementFromPoint(x, y)?.closest(".grid") ? { x, y } : undefined;
	}, share);
	if (!place) return false;
	await page.mouse.click(place.x, place.y);
	return true;
}
