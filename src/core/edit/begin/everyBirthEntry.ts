import { readSettings } from "../../read/readSettings.ts";
import { say } from "../../say.ts";
import { unitSheet } from "../../sheets/unit.ts";
import type { BeginEntry } from "./beginEntry.ts";
import { settingEntry } from "./settingEntry.ts";

const share = settingEntry("kits_used_per_100_births");
const EVERY = 100;

/** Whether a kit is opened at every birth: every one of them then goes through a round. It stands filled in with no. */
export const everyBirthEntry: BeginEntry = {
	key: "every-birth",
	label: say`Is a kit opened at every birth?`,
	help: say`Then each birth sends a kit through a round, whether it was used on the baby or not: 100 kits for 100 births. Otherwise as many as the settings say.`,
	options: [
		["no", say`no`],
		["yes", say`yes`],
	],
	unit: () => "",
	allowed: () => say`yes or no`,
	read(workbook) {
		const { outcome } = readSettings(workbook.tables[unitSheet.file]).settings
			.kits_used_per_100_births;
		return outcome.ok && outcome.value === EVERY ? "yes" : "no";
	},
	write(workbook, text) {
		if (text === this.read(workbook)) return workbook;
		return share.write(workbook, text === "yes" ? String(EVERY) : "");
	},
};
