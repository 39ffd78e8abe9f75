import { type DayTexts, daysWritten, dayTexts } from "../../../core/edit/monday/daysWritten.ts";
import { routine } from "../../../core/edit/monday/routine.ts";
import { wrongFor } from "../../../core/edit/notAllowed.ts";
import { readWorkbook } from "../../../core/read/readWorkbook.ts";
import { say } from "../../../core/say.ts";
import { recordsSheet } from "../../../core/sheets/records.ts";
import { roundsDoneSheet } from "../../../core/sheets/roundsDone.ts";
import { usesSheet } from "../../../core/sheets/uses.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import { el, fill } from "../../dom/el.ts";
import { counted } from "../../format/counted.ts";
import { shownDay } from "../../format/shownDay.ts";
import { DASH } from "../../format/shownFigure.ts";
import { paperTable } from "../../print/paperTable.ts";
import { hashOf } from "../../shell/hashOf.ts";
import type { State } from "../../state/store.ts";
import type { StepPart } from "./mondayStep.ts";
import { sayBeside } from "./sayBeside.ts";

interface Line {
	readonly date: IsoDate;
	readonly births: HTMLInputElement;
	readonly kitsUsed: HTMLInputElement;
	readonly byLog: HTMLElement;
}

/** Births and kits used of the days past, as one table. */
export const daysStep: StepPart = ({ store }, { done }) => {
	const place = el("div", { class: "wide" });
	const log = el("p", {});
	const reason = el("p", { class: "reason", role: "alert", id: "monday-days-wrong" });
	const form = el(
		"form",
		{ novalidate: true },
		log,
		place,
		reason,
		el("button", { type: "submit", class: "main" }, say`Keep these days`),
	);
	let lines: readonly Line[] = [];
	let shown = "";
	form.addEventListener("submit", (event) => {
		event.preventDefault();
		const texts = lines.map(
			({ date, births, kitsUsed }): DayTexts => ({
				date,
				births: births.value,
				kitsUsed: kitsUsed.value,
			}),
		);
		const written = daysWritten(store.state.workbook, texts);
		for (const { births, kitsUsed } of lines)
			for (const field of [births, kitsUsed]) field.removeAttribute("aria-invalid");
		if (!written.ok) {
			const [first] = written.wrong;
			const line = lines.find(({ date }) => date === first?.date);
			if (!first || !line) return fill(reason, first?.words);
			const isOfBirths = wrongFor(recordsSheet.columns.births, line.births.value) !== undefined;
			return sayBeside(isOfBirths ? line.births : line.kitsUsed, reason, first.words);
		}
		fill(reason);
		const given = texts.filter(({ births }) => births.trim() !== "").length;
		done(
			written.workbook,
			say`Births of ${given} of ${counted(texts.length, "day")} stand in the register.`,
		);
	});
	return {
		element: form,
		paint(state) {
			const past = routine(state.workbook)?.past ?? [];
			const kept = past.map((day) => dayTexts(state.workbook, day));
			const words = logged(state, past);
			fill(log, ...words);
			const now = JSON.stringify(kept);
			if (now !== shown) {
				lines = kept.map(lineOf);
				fill(place, table(lines));
			}
			shown = now;
			// What is begun in the fields stays while the log is copied in.
			for (const { date, byLog } of lines)
				byLog.textContent = String(kitsLogged(state, date) ?? DASH);
		},
	};
};

function lineOf({ date, births, kitsUsed }: DayTexts): Line {
	const input = (label: string, value: string) =>
		el("input", {
			type: "text",
			inputmode: "numeric",
			autocomplete: "off",
			class: "count",
			"aria-label": `${label}, ${shownDay(date)}`,
			value,
		});
	return {
		date,
		births: input(recordsSheet.columns.births.label, births),
		kitsUsed: input(recordsSheet.columns.kits_used.label, kitsUsed),
		byLog: el("span", {}),
	};
}

/** Kits used and opened by the log of the bench, whatever stands in the register; undefined where it has no line of the day. */
export function kitsLogged(state: State, day: IsoDate): number | undefined {
	const { uses } = readWorkbook(state.workbook).tables;
	const lines = uses.rows.filter(({ value }) => value.at.date === day);
	if (lines.length === 0) return undefined;
	return lines.filter(({ value }) => value.what !== "none_ready").length;
}

function table(lines: readonly Line[]): HTMLElement {
	return paperTable(
		say`Days past`,
		[
			{ label: say`Day` },
			{ label: recordsSheet.columns.births.label },
			{ label: recordsSheet.columns.kits_used.label, unit: say`blank: by the log` },
			{ label: say`By the log`, numeric: true },
		],
		[
			{
				rows: lines.map(({ date, births, kitsUsed, byLog }) => [
					shownDay(date),
					births,
					kitsUsed,
					byLog,
				]),
			},
		],
	);
}

/** How much of the log of the bench has been copied in. */
function logged(state: State, past: readonly IsoDate[]) {
	const { uses, roundsDone } = readWorkbook(state.workbook).tables;
	const days = new Set(past);
	const usesThere = uses.rows.filter(({ value }) => days.has(value.at.date)).length;
	const roundsThere = roundsDone.rows.filter(({ value }) => days.has(value.date)).length;
	return [
		say`Written down of these days: ${counted(usesThere, "line")} of kits used, ${counted(roundsThere, "round")} done. What stands only on the log at the bench is copied in first:`,
		" ",
		el("a", { href: hashOf(usesSheet.file) }, usesSheet.title),
		", ",
		el("a", { href: hashOf(roundsDoneSheet.file) }, roundsDoneSheet.title),
		".",
	];
}
