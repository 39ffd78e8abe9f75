import { stepsEntry } from "../../../core/edit/begin/stepsEntry.ts";
import { birthsEveryDayEntry } from "../../../core/edit/trial/birthsEveryDayEntry.ts";
import { kitsTriedEntry } from "../../../core/edit/trial/kitsTriedEntry.ts";
import { readSettings } from "../../../core/read/readSettings.ts";
import { textsOf } from "../../../core/read/textsOf.ts";
import { say } from "../../../core/say.ts";
import { roundsSheet } from "../../../core/sheets/rounds.ts";
import { type SettingKey, settings } from "../../../core/sheets/settings.ts";
import { unitSheet } from "../../../core/sheets/unit.ts";
import { shownChoice } from "../../format/shownChoice.ts";
import { DASH, shownFigure } from "../../format/shownFigure.ts";
import type { State } from "../../state/store.ts";

/** A setting (or the rounds) that two sides have differently, each value for reading. */
export interface DifferingSetting {
	readonly label: string;
	readonly unit: string;
	readonly left: string;
	readonly right: string;
}

/** Settings, rounds and what else can be tried in which two workbooks differ, in the order of the settings. First day and number of days are the same by rule. */
export function differingSettings(left: State, right: State): DifferingSetting[] {
	const [before, after] = [left, right].map(valuesOf) as [Values, Values];
	const keys = (Object.keys(settings) as SettingKey[]).filter((key) => before(key) !== after(key));
	const differing = keys.map((key) => ({
		label: settings[key].label,
		unit: settings[key].unit,
		left: before(key),
		right: after(key),
	}));
	const [roundsBefore, roundsAfter] = [roundsOf(left), roundsOf(right)];
	const rounds = { label: say`Rounds of a day`, unit: "", left: roundsBefore, right: roundsAfter };
	const others = otherEntries.map(({ label, unit, read }) => ({
		label,
		unit: unit(left.workbook),
		left: read(left.workbook) || DASH,
		right: read(right.workbook) || DASH,
	}));
	return [...differing, ...[rounds, ...others].filter((each) => each.left !== each.right)];
}

/** What is no setting, and differs only where it is tried. */
const otherEntries = [birthsEveryDayEntry, kitsTriedEntry, stepsEntry];

type Values = (key: SettingKey) => string;

/** A value as it is understood; where it is not, the text as typed. */
function valuesOf({ workbook }: State): Values {
	const read = readSettings(workbook.tables[unitSheet.file]).settings;
	const unit = textsOf(workbook, unitSheet);
	return (key) => {
		const figure = read[key];
		const { value } = settings[key];
		if (figure.outcome.ok) {
			const options = "options" in value ? (value.options as readonly string[]) : undefined;
			return shownChoice(shownFigure(figure), options) || DASH;
		}
		const row = unit.rows.find((cells) => unit.cell(cells, "key").trim() === key);
		return (row && unit.cell(row, "value").trim()) || DASH;
	};
}

function roundsOf({ workbook }: State): string {
	const rounds = textsOf(workbook, roundsSheet);
	const each = rounds.rows.map((row) =>
		[rounds.cell(row, "start"), rounds.cell(row, "label")].join(" ").trim(),
	);
	return each.filter(Boolean).sort().join(", ") || DASH;
}
