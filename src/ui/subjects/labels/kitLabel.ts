import type { Method } from "../../../core/methods/method.ts";
import { say } from "../../../core/say.ts";
import type { IsoDate } from "../../../core/values/date.ts";
import { el } from "../../dom/el.ts";
import { counted } from "../../format/counted.ts";
import { levelWords } from "../../format/levelWords.ts";
import { shownDayAndYear } from "../../format/shownDay.ts";
import type { Printed } from "../../state/unitSetting.ts";
import { useBy } from "./discardAt.ts";
import { label, labelHead, labelLine } from "./label.ts";

export interface KitLabel {
	readonly unit: string;
	readonly kit: string;
	readonly kind: string;
	/** By what its pieces are disinfected; empty where that is not known. */
	readonly methods: readonly Method[];
	readonly readyLifeDays: Printed<number>;
	/** Undefined leaves room to write. */
	readonly done: IsoDate | undefined;
	/** False where nothing says how the kit stands: then who does the round ticks it. */
	readonly isKnownReady: boolean;
}

/** The label of a kit's container: which kit, done when and by whom, and until when it may be used. */
export function kitLabel({
	unit,
	kit,
	kind,
	methods,
	readyLifeDays,
	done,
	isKnownReady,
}: KitLabel): HTMLElement {
	const life = readyLifeDays.value;
	const days = life === undefined ? undefined : Math.floor(life);
	const until = done !== undefined && days !== undefined ? useBy(done, days) : undefined;
	return label(
		`kit${isKnownReady ? "" : " label-tight"}`,
		unit,
		labelHead(kit, kind),
		...(isKnownReady
			? [el("p", {}, say.safety`Newborn resuscitation kit: disinfected, complete, tested.`)]
			: toTick()),
		methods.length > 0 && el("p", { class: "label-small" }, levelWords(methods)),
		labelLine(say.safety`Done on`, done && shownDayAndYear(done)),
		labelLine(say.safety`USE BY`, until && shownDayAndYear(until)),
		el("p", { class: "label-small" }, lifeWords(days), " ", readyLifeDays.why),
		el(
			"div",
			{ class: "label-pair" },
			labelLine(say.safety`Done by`, undefined),
			labelLine(say.safety`Checked by`, undefined),
		),
		el(
			"p",
			{ class: "label-caution" },
			say.safety`Opened, wet or torn: do not use. Test again before each birth.`,
		),
	);
}

/** To be ticked by hand, because the record is silent; not ticked is not ready. */
function toTick(): HTMLElement[] {
	return [
		el(
			"p",
			{},
			say.safety`Newborn resuscitation kit. Tick what is true; nothing ticked: do not use.`,
		),
		el("p", {}, boxed(say.safety`☐ disinfected, complete, tested`)),
		el(
			"p",
			{},
			boxed(say.safety`☐ used: to be reprocessed`),
			" ",
			boxed(say.safety`☐ incomplete: do not use`),
		),
	];
}

/** A box never ends a line: what it is for would stand on the next. */
const boxed = (words: string) => words.replaceAll("☐ ", "☐\u00a0");

function lifeWords(days: number | undefined): string {
	if (days === undefined) return say.safety`After that day through a round again.`;
	if (days < 1) return say.safety`Only on the day it was done; then through a round again.`;
	return say.safety`${counted(days, "day")} after it was done, closed and dry.`;
}
