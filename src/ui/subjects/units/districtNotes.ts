import { say } from "../../../core/say.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import { counted, listed } from "../../format/counted.ts";
import { shownDay } from "../../format/shownDay.ts";
import type { District, DistrictSums } from "./district.ts";
import { unitsNotInSums } from "./unitsNotInSums.ts";

const MOST_NOTES = 20;
const MOST_NAMES = 8;

/** The day on which most plans begin. */
export function usualDay({ firstDays }: District): IsoDate | undefined {
	return [...firstDays].sort(([, one], [, other]) => other - one)[0]?.[0];
}

/** What must be known of the sums: what is lacking in them, other weeks, what was given twice, what the store could not be taken off. */
export function districtNotes(district: District, sums: DistrictSums): string[] {
	const notes = [
		...waitingNote(district),
		...unreadNote(district),
		...notInSumsNote(district),
		...weeksNote(district),
		...[...district.problems, ...sums.problems].map(({ message }) => message),
	];
	const left = notes.length - MOST_NOTES;
	return left > 0 ? [...notes.slice(0, MOST_NOTES), say`… and ${left} more.`] : notes;
}

function waitingNote({ waiting }: District): string[] {
	if (waiting === 0) return [];
	return [
		say`The reading was stopped, and the list and the sums lack what was not read: ${counted(waiting, "unit")}.`,
	];
}

function unreadNote({ units }: District): string[] {
	const unread = units.filter(({ row }) => row.state === "not_read").map(({ row }) => row.unit);
	if (unread.length === 0) return [];
	return [
		say`${counted(unread.length, "unit")} could not be read, so nothing of theirs is in the sums: ${listed(unread, MOST_NAMES)}.`,
	];
}

function notInSumsNote({ units }: District): string[] {
	const names = unitsNotInSums(units).map(({ row }) => row.unit);
	if (names.length === 0) return [];
	return [
		say`${counted(names.length, "unit")} gave no stock or target of any item, so nothing of theirs is in the sums: ${listed(names, MOST_NAMES)}.`,
	];
}

/** Plans that do not begin together, with the units of the rarer days. */
function weeksNote(district: District): string[] {
	const days = district.firstDays;
	if (days.length < 2) return [];
	const usual = usualDay(district);
	const others = district.units.filter(({ row }) => row.first_day && row.first_day !== usual);
	const counts = days.map(([day, units]) => say`${shownDay(day)} (${counted(units, "unit")})`);
	return [
		say`The units' plans begin on different days, so the sums are of different days: ${listed(counts, MOST_NAMES)}. Another week than most have: ${listed(
			others.map(({ row }) => row.unit),
			MOST_NAMES,
		)}.`,
	];
}
