import { settingEntry } from "../../../core/edit/begin/settingEntry.ts";
import { FEWEST_DAYS } from "../../../core/forecast/forecast.ts";
import type { Place } from "../../../core/problem.ts";
import { textsOf } from "../../../core/read/textsOf.ts";
import { say } from "../../../core/say.ts";
import type { Sheet } from "../../../core/sheet.ts";
import { kindUseSheet } from "../../../core/sheets/kindUse.ts";
import { kitsSheet } from "../../../core/sheets/kits.ts";
import { lotsSheet } from "../../../core/sheets/lots.ts";
import { recordsSheet } from "../../../core/sheets/records.ts";
import type { SettingKey } from "../../../core/sheets/settings.ts";
import { unitSheet } from "../../../core/sheets/unit.ts";
import { usageSheet } from "../../../core/sheets/usage.ts";
import type { Workbook } from "../../../core/workbook.ts";

/** Something that makes the plan better once it stands, and where it is entered. */
export interface Next {
	readonly words: string;
	readonly place: Place;
}

/** What is still open after the first plan, in the order in which it helps. */
export function whatNext(workbook: Workbook): Next[] {
	const at = (sheet: Sheet, column: string): Place => ({ file: sheet.file, line: null, column });
	const isOpen = (key: SettingKey) => settingEntry(key).read(workbook) === "";
	const open: (Next | false)[] = [
		isBlank(workbook, lotsSheet, "made_on") &&
			isBlank(workbook, lotsSheet, "received_on") && {
				words: say`The day the product was made or received: liquids lose strength, and the plan then measures out more.`,
				place: at(lotsSheet, "made_on"),
			},
		isBlank(workbook, kitsSheet, "ready_since") && {
			words: say`Since when each kit has been ready: “State of each kit” then says which to use next.`,
			place: at(kitsSheet, "ready_since"),
		},
		hasSeveralKinds(workbook) &&
			isBlank(workbook, kindUseSheet, "beds") && {
				words: say`How many births use each kind of kit, and the beds and spares of each: until then what the settings say holds for all of them.`,
				place: at(kindUseSheet, "beds"),
			},
		isOpen("unit_name") && {
			words: say`The name of your unit: it stands on every sheet and label.`,
			place: at(unitSheet, "unit_name"),
		},
		isOpen("heat_kw") &&
			isOpen("boil_minutes_measured") && {
				words: say`How long a full pot takes to boil: until then the times of the fires go by an estimate.`,
				place: at(unitSheet, "boil_minutes_measured"),
			},
		isBlank(workbook, usageSheet, "item") && {
			words: say`What is used up in a round (gauze, gloves, soap, vinegar): the plan then counts and orders it.`,
			place: at(usageSheet, "item"),
		},
		isBlank(workbook, recordsSheet, "births") && {
			words: say`Births from the register: after ${FEWEST_DAYS} recorded days the plan forecasts by itself.`,
			place: at(recordsSheet, "date"),
		},
		{
			words: say`The other settings stand at their defaults: go through strength and time of the soak first.`,
			place: at(unitSheet, "target_strength_pct"),
		},
	];
	return open.filter((next) => next !== false);
}

function hasSeveralKinds(workbook: Workbook): boolean {
	const texts = textsOf(workbook, kitsSheet);
	return new Set(texts.rows.map((row) => texts.cell(row, "kind").trim())).size > 1;
}

function isBlank(workbook: Workbook, sheet: Sheet, column: string): boolean {
	const texts = textsOf(workbook, sheet);
	return texts.rows.every((row) => texts.cell(row, column).trim() === "");
}
