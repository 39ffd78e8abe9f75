import type { ComputedRow } from "../../../core/computedTable.ts";
import { inSentence } from "../../../core/inSentence.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { dayCoverSheet } from "../../../core/sheets/dayCover.ts";
import { kitRegisterSheet } from "../../../core/sheets/kitRegister.ts";
import { leversSheet } from "../../../core/sheets/levers.ts";
import { runSheetSheet } from "../../../core/sheets/runSheet.ts";
import { capital } from "../../format/capital.ts";
import { oneNeedIn } from "../../format/howOften.ts";
import { semicolon } from "../../format/semicolon.ts";
import { shownPlain } from "../../format/shownNumber.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSettings.ts";
import { dayRounds, runDays } from "../rounds/dayRounds.ts";
import { oneKitSteps } from "../rounds/oneKitSteps.ts";
import { halfPast, hoursByKind, weakestHour } from "./dayCoverView.ts";

/** The answers over the sheets about what must be ready; undefined where there is none yet. */
export const readyHeadlines: Readonly<Record<string, (state: State) => string | undefined>> = {
	[dayCoverSheet.file]: dayCoverHeadline,
	[leversSheet.file]: leversHeadline,
	[runSheetSheet.file]: runSheetHeadline,
	[kitRegisterSheet.file]: registerHeadline,
};

function dayCoverHeadline(state: State): string | undefined {
	const kinds = [...hoursByKind(state)];
	if (kinds.length === 0) return undefined;
	const words = kinds.map(([kind, points]) => {
		const weakest = weakestHour(points);
		const even = points.every(({ none }) => none === weakest.none);
		const risk = even
			? say`at every hour ${oneNeedIn(weakest.none)}`
			: say`weakest at ${halfPast(weakest)}, when ${oneNeedIn(weakest.none)}`;
		return ofKind(kind, risk);
	});
	return capital(words.join(semicolon));
}

function leversHeadline(state: State): string | undefined {
	const rows = rowsOf(state.plan, leversSheet);
	const kinds = [...new Set(rows.map((row) => wordIn(row.kind)))];
	const words = kinds.flatMap((kind) => {
		const best = rows.find(
			(row) => wordIn(row.kind) === kind && numberIn(row.avoided_per_1000_uses) !== undefined,
		);
		if (!best) return [];
		return [ofKind(kind, inSentence(wordIn(best.change)))];
	});
	return words.length === 0 ? undefined : say`What would help most: ${words.join(semicolon)}`;
}

function runSheetHeadline(state: State): string | undefined {
	if (unitSetting(state, "reprocessing") === "after_each_use") {
		const last = oneKitSteps(state).steps.at(-1);
		return last && say`Each kit takes ${shownPlain(Math.round(last.endsAt))} minutes as it comes`;
	}
	const days = runDays(state);
	const rounds = days.flatMap((day) => dayRounds(state, day));
	if (rounds.length === 0 || rounds.some(({ steps }) => steps.length === 0)) return undefined;
	const minutes = rounds.map(
		({ steps }) => (steps.at(-1)?.endsAt ?? 0) - (steps[0]?.startsAt ?? 0),
	);
	const aDay = rounds.length / days.length;
	const longest = say`${shownPlain(Math.max(...minutes))} minutes`;
	return aDay === 1
		? say`One round a day, over in ${longest} or less`
		: say`${aDay} rounds a day, each over in ${longest} or less`;
}

function registerHeadline(state: State): string | undefined {
	const rows = rowsOf(state.plan, kitRegisterSheet);
	if (rows.length === 0) return undefined;
	const serving = rows.filter((row) => wordIn(row.counts) === "yes").length;
	const counts =
		serving === rows.length
			? say`all ${rows.length} kits count`
			: serving === 1
				? say`1 of ${rows.length} kits counts`
				: say`${serving} of ${rows.length} kits count`;
	const next = nextOfKinds(rows);
	return next === "" ? say`No kit is ready; ${counts}` : say`Use ${next} next; ${counts}`;
}

/** The first ready kit of each kind; the kind is named where there are several. */
function nextOfKinds(rows: readonly ComputedRow<typeof kitRegisterSheet>[]): string {
	const ready = rows
		.filter((row) => numberIn(row.use_next) !== undefined)
		.sort((a, b) => (numberIn(a.use_next) as number) - (numberIn(b.use_next) as number));
	const kinds = new Set(rows.map((row) => wordIn(row.kind)));
	const firsts = [...kinds].flatMap((kind) => {
		const first = ready.find((row) => wordIn(row.kind) === kind);
		if (!first) return [];
		return [kinds.size === 1 ? wordIn(first.kit) : `${wordIn(first.kit)} (${kind})`];
	});
	return firsts.length === 0 ? "" : firsts.reduce((one, other) => say`${one} or ${other}`);
}

function ofKind(kind: string, words: string): string {
	return kind === "" ? words : say`${kind}: ${words}`;
}
