import { browser, onStick as site } from "./fixture.ts";
import { WorkbookPage } from "./workbookPage.ts";

export const phone = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true };

/** A person at the bench on the first day of the demo's plan, by a clock that is set for it. */
export async function open(options = {}, sheet = "today", clock = "2027-03-01T09:40:00") {
	return WorkbookPage.open(browser, site, options, sheet, async (context) => {
		await context.clock.setFixedTime(new Date(clock));
	});
}
