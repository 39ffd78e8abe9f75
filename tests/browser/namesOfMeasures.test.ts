import { expect, test } from "vitest";
import { folderOf, languages } from "../../src/messages/languages.ts";
import { browser, onStick as site } from "./fixture.ts";
import { WorkbookPage } from "./workbookPage.ts";

test.each(languages.map(({ code }) => folderOf(code)))(
	"no measure of the plan has its name cut off (%s)",
	{ timeout: 60_000 },
	async (language) => {
		const there = { ...site, address: `${site.address}${language}` };
		const workbook = await WorkbookPage.open(browser, there);
		await workbook.drawn();
		const cut = await workbook.page
			.locator(".grid td.label .figure")
			.evaluateAll((names) =>
				names
					.filter((name) => name.scrollHeight > name.clientHeight + 1)
					.map((name) => name.textContent),
			);
		expect(cut).toEqual([]);
		expect(workbook.errors).toEqual([]);
		await workbook.close();
	},
);
