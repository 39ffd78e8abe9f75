import { date } from "../values/date.ts";
import { number } from "../values/number.ts";
import { optional } from "../values/valueKind.ts";

/** Largest quantity a plan can show; the inputs' limits keep every result far below it. */
const LARGEST = 1e15;

/** Kinds of value in computed sheets; blank where there is no answer. */
export const amount = () => optional(number({ min: 0, max: LARGEST }));
export const wholeAmount = () => optional(number({ min: 0, max: LARGEST, whole: true }));
export const day = date;
