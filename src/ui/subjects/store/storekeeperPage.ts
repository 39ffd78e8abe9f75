import { say } from "../../../core/say.ts";
import { el, fill } from "../../dom/el.ts";
import { renew } from "../../dom/renew.ts";
import { shownDayAndYear } from "../../format/shownDay.ts";
import type { OwnPage, PrintOut, View } from "../../page.ts";
import { paperForm } from "../../print/paperForm.ts";
import { printOut } from "../../print/printOut.ts";
import { signatures } from "../../print/signatures.ts";
import { cautionList } from "../../sheet/cautionList.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSetting.ts";
import { storeCautions } from "./storeCautions.ts";
import { storekeeperHeadline } from "./storekeeperLists.ts";
import { storekeeperSheet } from "./storekeeperSheet.ts";
import { storekeeperTitle } from "./storekeeperTitle.ts";

const onPaper: PrintOut = {
	name: say`Print this page`,
	pages: (state) => [
		paperForm(
			state,
			"storekeeper",
			{
				title: storekeeperHeadline(state),
				when: asOf(state),
				cautions: storeCautions,
				end: signatures(say`Seen by the storekeeper, date`, say`Handed over by, date`),
			},
			storekeeperSheet(state),
		),
	],
};

function asOf(state: State): string {
	const first = unitSetting(state, "plan_start");
	return first ? say`As of ${shownDayAndYear(first)}` : say`As of the first day of the plan`;
}

/** Only what the storekeeper needs, in the order of urgency. */
export const storekeeperPage: OwnPage = {
	mount(place, { store }) {
		const title = el("h1", {});
		const about = el("div", { class: "about" });
		const sheet = el("div", { class: "storekeeper" });
		const print = el("button", { type: "button" }, onPaper.name);
		print.addEventListener("click", () => printOut(onPaper, store.state));
		fill(
			place,
			el("header", { class: "sheet-head" }, title, about),
			el("div", { class: "tools" }, print),
			sheet,
			cautionList(storeCautions),
		);
		const view: View = {
			file: storekeeperTitle.file,
			onPaper,
			paint(state) {
				renew(title, storekeeperHeadline(state));
				fill(
					about,
					el(
						"p",
						{},
						say`${asOf(state)}, the first day of the plan: what to do, the most pressing first.`,
					),
				);
				fill(sheet, storekeeperSheet(state));
			},
			show() {},
			destroy() {},
		};
		view.paint(store.state);
		return view;
	},
};
